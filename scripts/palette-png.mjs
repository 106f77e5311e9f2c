import { crc32, deflateSync, inflateSync } from 'node:zlib';

/**
 * A screenshot written anew with a palette: a page has few colours, and one byte a pixel packs to a third.
 *
 * Reads what Chromium writes: 8 bits a channel, RGB or RGBA, not interlaced. The most frequent colours stand as they
 * are, the others (edges of letters) become the nearest of them.
 *
 * Source   PNG, ISO/IEC 15948:2004, 9.2 (filters), 11.2 (chunks); read
 */
const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

const chunksOf = (png) => {
  const found = [];
  for (let at = signature.length; at < png.length; ) {
    const length = png.readUInt32BE(at);
    found.push({ type: png.toString('latin1', at + 4, at + 8), data: png.subarray(at + 8, at + 8 + length) });
    at += length + 12;
  }
  return found;
};

const paeth = (left, above, corner) => {
  const guess = left + above - corner;
  const [byLeft, byAbove, byCorner] = [left, above, corner].map((near) => Math.abs(guess - near));
  if (byLeft <= byAbove && byLeft <= byCorner) return left;
  return byAbove <= byCorner ? above : corner;
};

/** Bytes of the rows without their filters. */
const unfiltered = (packed, { width, height, channels }) => {
  const stride = width * channels;
  const bytes = Buffer.alloc(stride * height);
  for (let y = 0; y < height; y += 1) {
    const filter = packed[y * (stride + 1)];
    for (let x = 0; x < stride; x += 1) {
      const at = y * stride + x;
      const left = x >= channels ? bytes[at - channels] : 0;
      const above = y > 0 ? bytes[at - stride] : 0;
      const corner = x >= channels && y > 0 ? bytes[at - stride - channels] : 0;
      const predicted = [0, left, above, (left + above) >> 1, paeth(left, above, corner)][filter];
      bytes[at] = packed[y * (stride + 1) + 1 + x] + predicted;
    }
  }
  return bytes;
};

/** Width, height and each pixel as 0xRRGGBB. */
export const readPng = (png) => {
  const chunks = chunksOf(png);
  const head = chunks.find(({ type }) => type === 'IHDR').data;
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)];
  const channels = { 2: 3, 6: 4 }[head[9]];
  if (head[8] !== 8 || channels === undefined || head[12] !== 0)
    throw new Error('not a picture as Chromium writes it');
  const packed = inflateSync(
    Buffer.concat(chunks.filter(({ type }) => type === 'IDAT').map(({ data }) => data)),
  );
  const bytes = unfiltered(packed, { width, height, channels });
  const pixels = new Uint32Array(width * height);
  for (let i = 0; i < pixels.length; i += 1) pixels[i] = bytes.readUIntBE(i * channels, 3);
  return { width, height, pixels };
};

const distance = (a, b) =>
  ((a >> 16) - (b >> 16)) ** 2 + (((a >> 8) & 255) - ((b >> 8) & 255)) ** 2 + ((a & 255) - (b & 255)) ** 2;

/** Squares of the steps of red, green and blue together: some ten of 255 in each, which the eye hardly parts. */
const leastApart = 300;

/** The colours that are kept, the most frequent first. */
const paletteOf = (pixels, most) => {
  const counts = new Map();
  for (const pixel of pixels) counts.set(pixel, (counts.get(pixel) ?? 0) + 1);
  const frequent = [...counts].sort(([a, n], [b, m]) => m - n || a - b).map(([colour]) => colour);
  const kept = [];
  for (const colour of frequent) {
    if (kept.length === most) break;
    // steps between two colours spend no place that a third colour, rare but of its own, must have
    if (kept.every((one) => distance(one, colour) > leastApart)) kept.push(colour);
  }
  return { kept, all: counts.keys() };
};

const chunk = (type, data) => {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(data.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), named.length + 4);
  return framed;
};

export const withPalette = (png, most = 256) => {
  const { width, height, pixels } = readPng(png);
  const { kept, all } = paletteOf(pixels, most);
  const nearest = new Map();
  for (const colour of all) {
    let best = 0;
    for (let i = 1; i < kept.length; i += 1) {
      if (distance(kept[i], colour) < distance(kept[best], colour)) best = i;
    }
    nearest.set(colour, best);
  }
  const rows = Buffer.alloc((width + 1) * height);
  for (let i = 0; i < pixels.length; i += 1) {
    rows[i + Math.floor(i / width) + 1] = nearest.get(pixels[i]);
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 3, 0, 0, 0], 8);
  const palette = Buffer.from(kept.flatMap((colour) => [colour >> 16, (colour >> 8) & 255, colour & 255]));
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('PLTE', palette),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};
