export { schemaWords, spaced } from '../../book/schema-words.ts';
