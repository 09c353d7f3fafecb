// The door for a page and for node: `const shankline = await open(bytes)`, then `shankline.ask("check", {joint})`.

/** What the module refuses: `code`, `message`, `place` (field, line, column, case), the whole document, and its `text`. */
export class Refusal extends Error {
  constructor(document, text) {
    super(document.text);
    this.text = text;
    this.name = 'Refusal';
    this.code = document.code;
    this.place = document.place;
    this.document = document;
  }
}

const INTERFACE = 1;
const ANSWERED = 0, REFUSED = 1;
const PICTURES = new Set(['explain', 'draw', 'draw_connection']);

/** Opens the module from its bytes (an ArrayBuffer), once; what it gives may be used as often as wanted. */
export async function open(bytes) {
  const module = await WebAssembly.compile(bytes);
  let to;
  const start = async () => { to = (await WebAssembly.instantiate(module, {})).exports; };
  const encoder = new TextEncoder(), decoder = new TextDecoder();
  await start();
  if (to.shankline_interface() !== INTERFACE) throw new Error('the module has another interface');

  /** Room for each of the byte arrays or sizes, used and given back. */
  function within(parts, use) {
    const rooms = parts.map(part => {
      const size = typeof part === 'number' ? part : part.byteLength;
      const at = to.shankline_room(size);
      return { at, size, part };
    });
    // The memory moves when it grows: only now is it looked at.
    for (const { at, size, part } of rooms) {
      const room = new Uint8Array(to.memory.buffer, at, size);
      if (typeof part === 'number') room.fill(0);
      else room.set(new Uint8Array(part.buffer, part.byteOffset, part.byteLength));
    }
    try {
      return use(...rooms.map(({ at }) => at));
    } finally {
      for (const { at, size } of rooms) to.shankline_clear(at, size);
    }
  }

  /** The text of an answer, or the refusal in it. */
  function taken(status, answer) {
    if (status !== ANSWERED && status !== REFUSED) throw new Error('the module was called wrongly');
    const [at, length] = new Uint32Array(to.memory.buffer, answer, 2);
    const text = decoder.decode(new Uint8Array(to.memory.buffer, at, length));
    to.shankline_free(answer);
    if (status === REFUSED) throw new Refusal(JSON.parse(text), text);
    return text;
  }

  /** After a panic the module is not to be used again: the next question goes to a new one. */
  function guarded(use) {
    try {
      return use();
    } catch (problem) {
      if (problem instanceof WebAssembly.RuntimeError) {
        to = new WebAssembly.Instance(module, {}).exports;
        throw new Refusal({ code: 'internal', text: 'a fault of the library: please report it with the request', place: null });
      }
      throw problem;
    }
  }

  /** The answer as text, to a request that is text already. */
  function askText(question, request) {
    return guarded(() => {
      const parts = [encoder.encode(question + '\0'), encoder.encode(request), 8];
      return within(parts, (name, at, answer) =>
        taken(to.shankline_ask(name, at, parts[1].byteLength, answer), answer));
    });
  }

  return {
    askText,

    /** The answer to a question: a document as an object, or a picture or a text as a string. */
    ask(question, request = {}) {
      const text = askText(question, JSON.stringify(request));
      return PICTURES.has(question) ? text : JSON.parse(text);
    },

    /**
     * Many load cases of one joint, in newtons, as Float64Arrays of one length. `least` is 'steady' or
     * `{ across, along }`. Gives `words` (0 undecided, 1 holds, 2 does not hold), `modes` (places in `modes` of the
     * catalogue, 255 for none) and `utilisations`.
     */
    sweep(joint, across, along, least) {
      const count = across.length;
      const steady = least === 'steady';
      if (!steady && !(least?.across && least?.along)) throw new TypeError("least is 'steady' or { across, along }");
      const columns = [across, along, ...(steady ? [] : [least.across, least.along])];
      if (columns.some(own => !(own instanceof Float64Array) || own.length !== count)) {
        throw new TypeError('loads are Float64Arrays of one length');
      }
      return guarded(() => {
        const request = encoder.encode(JSON.stringify({ joint }));
        const parts = [request, count, count, 8 * count, 8, ...columns];
        return within(parts, (at, words, modes, utilisations, answer, ...loads) => {
          const [a, b, c = 0, d = 0] = loads;
          taken(to.shankline_sweep(at, request.byteLength, count, a, b, c, d, words, modes, utilisations, answer), answer);
          const memory = to.memory.buffer;
          return {
            words: new Uint8Array(memory, words, count).slice(),
            modes: new Uint8Array(memory, modes, count).slice(),
            utilisations: new Float64Array(memory, utilisations, count).slice(),
          };
        });
      });
    },
  };
}
