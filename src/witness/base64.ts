const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** A chunk is a whole number of triples, and short enough to be one text. */
const chunk = 3 * 8192;

const encoded = (bytes: Uint8Array): string => {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const [a = 0, b = 0, c = 0] = [bytes[i], bytes[i + 1], bytes[i + 2]];
    const bits = (a << 16) | (b << 8) | c;
    text += letters[bits >> 18]! + letters[(bits >> 12) & 63]!;
    text += i + 1 < bytes.length ? letters[(bits >> 6) & 63]! : '=';
    text += i + 2 < bytes.length ? letters[bits & 63]! : '=';
  }
  return text;
};

/**
 * Bytes as Base64 with padding, the same in every engine: browsers and Node differ in what they have for it.
 *
 * Source   RFC 4648, section 4
 */
export const base64 = (bytes: Uint8Array): string => {
  const texts: string[] = [];
  for (let at = 0; at < bytes.length; at += chunk) texts.push(encoded(bytes.subarray(at, at + chunk)));
  return texts.join('');
};
