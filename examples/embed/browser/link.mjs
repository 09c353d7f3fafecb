// A link that holds a joint and the units, behind the `#`: it never leaves the browser.

/** A joint as text. What JSON has no number for stays a text, which the module refuses, and is not dropped. */
export const written = joint =>
  JSON.stringify(joint, (_, value) => typeof value === 'number' && !Number.isFinite(value) ? String(value) : value, 2);

export function linkOf(text, units) {
  const bytes = new TextEncoder().encode(compact(text));
  let letters = '';
  for (const byte of bytes) letters += String.fromCharCode(byte);
  return `#units=${units}&joint=${btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')}`;
}

/** The text without the white space between its parts: no number and no name in it is written anew. What is no JSON stays. */
function compact(text) {
  try { JSON.parse(text); } catch { return text; }
  return text.replace(/("(?:[^"\\]|\\.)*")|\s+/g, (_, string) => string ?? '');
}

/** What a link holds: the text of a joint and the units, or nothing where there is no joint in it. */
export function jointOf(hash) {
  const parts = new Map(hash.replace(/^#/, '').split('&').map(part => {
    const at = part.indexOf('=');
    return [part.slice(0, at), part.slice(at + 1)];
  }));
  const packed = parts.get('joint');
  if (packed === undefined) return undefined;
  const units = parts.get('units');
  try {
    const letters = atob(packed.replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(letters, letter => letter.charCodeAt(0));
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), units };
  } catch {
    // Shown as it came: it is not JSON, and gets no answer.
    return { text: packed, units };
  }
}
