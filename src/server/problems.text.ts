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
  },
};
