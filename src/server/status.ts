/** Status of an answer by the code of its first problem; decided here and nowhere else. */
const statuses: Readonly<Record<string, number>> = {
  SERVER_HOST_FOREIGN: 403,
  SERVER_ORIGIN_FOREIGN: 403,
  SERVER_BODY_TOO_LARGE: 413,
  SERVER_BODY_NOT_JSON: 400,
  SERVER_BODY_NOT_UNDERSTOOD: 415,
  SERVER_REQUEST: 400,
  SERVER_NO_SUCH_PLACE: 404,
  SERVER_PAGES_ABSENT: 503,
  SERVER_FAULT: 500,
  HALL_LAPTOP_ONLY: 403,
  HALL_NOT_JOINED: 403,
  HALL_OPEN: 409,
  HALL_CLOSED: 409,
  HALL_PORT_TAKEN: 409,
  BOOK_TOO_LARGE: 413,
  RECORD_TOO_LARGE: 413,
  MEDIA_TOO_LARGE: 413,
  STORE_MEDIA_UNKNOWN: 404,
  STORE_MEDIA_GONE: 410,
  STORE_BOOK_UNKNOWN: 404,
  STORE_REVISION_UNKNOWN: 404,
  STORE_CONFLICT: 409,
  STORE_BOOK_EXISTS: 409,
  STORE_RECORD_GAP: 409,
  RECORD_FORK: 409,
  RECORD_ID_TWICE: 409,
  STORE_FULL: 507,
  STORE_BUSY: 503,
  STORE_CLOSED: 503,
  STORE_READ_ONLY: 503,
  STORE_NOT_DURABLE: 500,
  STORE_CORRUPT: 500,
  STORE_FROM_FUTURE: 500,
  STORE_FOREIGN: 500,
  STORE_CANNOT_OPEN: 500,
  STORE_FAILED: 500,
};

/** What was sent can't be taken as it is: every other problem of a book, a record or a quantity. */
const unprocessable = 422;

export const statusOf = (code: string): number => statuses[code] ?? unprocessable;
