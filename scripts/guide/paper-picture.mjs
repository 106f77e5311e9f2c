import { getDocumentProxy, renderPageAsImage } from 'unpdf';

/** Dots a point: the small print can still be read in a browser. */
const scale = 1.2;

// the reader of PDFs wants what Node has from version 22 on
if (!('transferToFixedLength' in ArrayBuffer.prototype)) {
  Object.defineProperty(ArrayBuffer.prototype, 'transferToFixedLength', {
    configurable: true,
    writable: true,
    value(length = this.byteLength) {
      const copy = new ArrayBuffer(length);
      new Uint8Array(copy).set(new Uint8Array(this, 0, Math.min(length, this.byteLength)));
      return copy;
    },
  });
}

/** A page of a paper as another program draws it, as a PNG. */
export const paperPicture = async (pdf, page) => {
  const read = await getDocumentProxy(new Uint8Array(pdf), { disableFontFace: true, verbosity: 0 });
  const png = await renderPageAsImage(read, page, { canvasImport: () => import('@napi-rs/canvas'), scale });
  return Buffer.from(png);
};
