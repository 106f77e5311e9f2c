import type { BookReader } from './book-reader.ts';
import { type Judgement, judgeFloor } from './judge-floor.ts';
import type { Where } from './utilities/inquiry.ts';

/** What the line does on a floor, as numbers and findings. */
export type LineFindings = Pick<Judgement, 'figures' | 'findings' | 'values'>;

/** Key of what the line does on a floor with its workings, for the questions of its utilities that rest on it. */
export const lineKey = ({ floor, formatPath }: Where): string => `line ${floor} ${formatPath}`;

/** What the line does on a floor, without the workings; kept as long as nothing that it looks at changes. */
export const lineFindings = (reader: BookReader, where: Where): LineFindings =>
  reader.kept(`findings of the ${lineKey(where)}`, () => {
    const format = reader.book.line?.formats?.[Number(where.formatPath.split('/').at(-1))]?.tag;
    const { figures, findings, values } = judgeFloor(reader, where.floor, format);
    return { figures, findings, values };
  });

/** Figures of the line on a floor: those of its own question where that was worked out, with the workings behind them. */
export const lineFigures = (reader: BookReader, where: Where): LineFindings['figures'] =>
  (reader.keptByNow<Pick<LineFindings, 'figures'>>(lineKey(where)) ?? lineFindings(reader, where)).figures;
