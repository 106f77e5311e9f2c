import archive from './archive.json';
import book from './book.json';
import fill from './fill.json';
import floor from './floor.json';
import joins from './joins.json';
import line from './line.json';
import media from './media.json';
import packing from './packing.json';
import papers from './papers.json';
import proof from './proof.json';
import quantity from './quantity.json';
import record from './record.json';
import server from './server.json';
import sheets from './sheets.json';
import store from './store.json';
import table from './table.json';
import text from './text.json';
import web from './web.json';
import witness from './witness.json';

/** The tables of the language, one for each folder that says something. */
export const es: readonly Readonly<Record<string, string>>[] = [
  archive,
  book,
  fill,
  floor,
  joins,
  line,
  media,
  packing,
  papers,
  proof,
  quantity,
  record,
  server,
  sheets,
  store,
  table,
  text,
  web,
  witness,
];
