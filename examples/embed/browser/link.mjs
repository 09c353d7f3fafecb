// A link that holds a joint or a connection, and the units, behind the `#`: it never leaves the browser.

/** A document as text. What JSON has no number for stays a text, which the module refuses, and is not dropped. */
export const written = whole =>
  JSON.stringify(whole, (_, value) => typeof value === 'number' && !Number.isFinite(value) ? String(value) : value, 2);

/** What a link may hold, by its name. */
const KINDS = ['joint', 'connection'];

export function linkOf(kind, text, units) {
  const bytes = new TextEncoder().encode(compact(text));
  let letters = '';
  for (const byte of bytes) letters += String.fromCharCode(byte);
  return `#units=${units}&${kind}=${btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')}`;
}

/** The text without the white space between its parts: no number and no name in it is written anew. What is no JSON stays. */
function compact(text) {
  try { JSON.parse(text); } catch { return text; }
  return text.replace(/("(?:[^"\\]|\\.)*")|\s+/g, (_, string) => string ?? '');
}

/** What a link holds: of what kind, its text and the units; or nothing where there is neither a joint nor a connection in it. */
export function heldBy(hash) {
  const parts = new Map(hash.replace(/^#/, '').split('&').map(part => {
    const at = part.indexOf('=');
    return [part.slice(0, at), part.slice(at + 1)];
  }));
  const kind = KINDS.find(one => parts.has(one));
  if (kind === undefined) return undefined;
  const packed = parts.get(kind);
  const units = parts.get('units');
  try {
    const letters = atob(packed.replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(letters, letter => letter.charCodeAt(0));
    return { kind, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), units };
  } catch {
    // Shown as it came: it is not JSON, and gets no answer.
    return { kind, text: packed, units };
  }
}
