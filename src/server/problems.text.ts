import type { ServerProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const serverProblemText: { readonly en: Readonly<Record<ServerProblemCode, string>> } = {
  en: {
    SERVER_HOST_FOREIGN:
      'The request was made to the name {given}, which is not this machine. Use one of {allowed}, or start the server with --allow-host and that name.',
    SERVER_ORIGIN_FOREIGN:
      'A page of {given} tried to write here. Only pages of {allowed} may. Nothing was changed.',
    SERVER_BODY_TOO_LARGE: 'What was sent is too large: at most {allowed} are taken. Nothing was changed.',
    SERVER_BODY_NOT_JSON: 'What was sent is not JSON. Nothing was changed.',
    SERVER_BODY_NOT_UNDERSTOOD: 'What was sent is not {allowed}. Nothing was changed.',
    SERVER_REQUEST: '{path} of the request is missing or of the wrong form: {allowed}.',
    SERVER_PAPER_NO_FLOOR: 'The book has no floor yet, so there is nothing to print. Write a floor first.',
    SERVER_NO_SUCH_PLACE: 'There is nothing at {given}.',
    SERVER_FAULT: 'The server made a mistake of its own. Nothing was saved by this request.',
    SERVER_PORT_TAKEN:
      'Port {given} is in use by another program, perhaps by a Twinfloor that runs already. Stop that one, or choose another port with --port. No data was touched.',
    SERVER_PORT_DENIED:
      'This account may not listen on port {given}. Choose one above 1023 with --port. No data was touched.',
    SERVER_HOST_ABSENT:
      'This machine has no address {given}. Name one of its own with --host, or leave it out for 127.0.0.1. No data was touched.',
    SERVER_CANNOT_LISTEN: 'The server could not listen on {given}: {allowed}. No data was touched.',
    SERVER_PAGES_ABSENT: 'The pages are not built: {given} is not there. Build them with npm run build.',
    HALL_LAPTOP_ONLY:
      'The hall is opened, closed and looked after from a page on the laptop itself. Nothing was changed.',
    HALL_OPEN: 'The hall is open already. Close it first to open it by another address.',
    HALL_CLOSED: 'The hall is closed: nobody could use a code. Open it first.',
    HALL_NO_SUCH_ADDRESS:
      'This laptop has no address {given} now. Choose one of those that it has; another network gives another one.',
    HALL_PORT_TAKEN: 'Port {given} is in use by another program. Choose another one.',
    HALL_CANNOT_OPEN: 'The hall could not be opened on {given}: {allowed}.',
    HALL_NO_CERTIFICATE:
      'The key and the certificate of this laptop could not be kept in the folder of the books: {allowed}. Without them nothing is encrypted; the hall stays closed.',
    HALL_CANNOT_KEEP:
      'The list of joined devices could not be written: {allowed}. Who was removed is out until the program starts again; who wanted to join has not.',
    HALL_NOT_JOINED:
      'This device has not joined the laptop, or was removed there. Open the address anew and type a new code; what waits on this device stays on it.',
    HALL_CODE_LETTERS: 'No code has {given} in it. Codes are made of {allowed} alone.',
    HALL_CODE_LENGTH: 'A code has {allowed} characters; this one has {given}.',
    HALL_CODE_MISTYPED:
      'One character of the code is mistyped. Look at it again; this was no guess and costs none.',
    HALL_CODE_WRONG:
      'This is not the code that the laptop shows now. {given, plural, one {# try is} other {# tries are}} left before this device must wait.',
    HALL_CODE_OVER: 'The code was used, ran out or was taken back. Ask for a new one at the laptop.',
    HALL_LOCKED:
      'Too many wrong codes came from this device. It may try again in {allowed} min; the laptop itself goes on working.',
    HALL_NAME_ABSENT: 'Say what this device is called: the laptop lists it by that name.',
  },
};
