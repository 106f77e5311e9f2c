import type { Book } from '../../book/index.ts';

/** The book on the supplies that are there for the visit only; a floor without one stays as it is. */
export const onTemporarySupply = (book: Book): Book => ({
  ...book,
  ...(book.floors === undefined
    ? {}
    : {
        floors: book.floors.map((floor) =>
          floor.temporarySupply === undefined ? floor : { ...floor, supply: floor.temporarySupply },
        ),
      }),
});
