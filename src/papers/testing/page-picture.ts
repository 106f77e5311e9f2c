import { type Canvas, createCanvas, loadImage, type SKRSContext2D } from '@napi-rs/canvas';
import { getDocumentProxy, renderPageAsImage } from 'unpdf';

/** A page in shades of grey, from the upper left, row by row. */
export interface PagePicture {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
}

/** Dots a point: a letter of the text is some five dots high. */
const coarse = 0.6;

/** The reader of PDFs wants what Node has from version 22 on. */
const withTransfer = (): void => {
  Object.defineProperty(ArrayBuffer.prototype, 'transferToFixedLength', {
    configurable: true,
    writable: true,
    value(this: ArrayBuffer, length = this.byteLength): ArrayBuffer {
      const copy = new ArrayBuffer(length);
      new Uint8Array(copy).set(new Uint8Array(this, 0, Math.min(length, this.byteLength)));
      return copy;
    },
  });
};

const greyOf = (context: SKRSContext2D, { width, height }: Canvas): PagePicture => {
  const { data } = context.getImageData(0, 0, width, height);
  const grey = new Uint8Array(width * height);
  // ITU-R BT.601 luma (memory): what a black-and-white print leaves of a colour
  for (let i = 0; i < grey.length; i += 1) {
    grey[i] = Math.round(0.299 * data[4 * i]! + 0.587 * data[4 * i + 1]! + 0.114 * data[4 * i + 2]!);
  }
  return { width, height, grey };
};

/** A picture that was kept. */
export const readPicture = async (png: Uint8Array): Promise<PagePicture> => {
  const image = await loadImage(png);
  const canvas = createCanvas(image.width, image.height);
  const context = canvas.getContext('2d');
  context.drawImage(image, 0, 0);
  return greyOf(context, canvas);
};

/** A page of a PDF as another program draws it: pdf.js, which knows nothing of how it was made. */
export const pictureOf = async (bytes: Uint8Array, page: number, scale = coarse): Promise<PagePicture> => {
  if (!('transferToFixedLength' in ArrayBuffer.prototype)) withTransfer();
  const pdf = await getDocumentProxy(new Uint8Array(bytes), { disableFontFace: true, verbosity: 0 });
  const png = await renderPageAsImage(pdf, page, { canvasImport: () => import('@napi-rs/canvas'), scale });
  return readPicture(new Uint8Array(png));
};

/** Sixteen shades are kept: the file is half as large, and what is lost is less than the softness of edges. */
const shade = 255 / 15;

/** The same as a file. */
export const pngOf = ({ width, height, grey }: PagePicture): Uint8Array => {
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  const image = context.createImageData(width, height);
  for (let i = 0; i < grey.length; i += 1) {
    const kept = Math.round(Math.round(grey[i]! / shade) * shade);
    image.data.set([kept, kept, kept, 255], 4 * i);
  }
  context.putImageData(image, 0, 0);
  return canvas.toBuffer('image/png');
};
