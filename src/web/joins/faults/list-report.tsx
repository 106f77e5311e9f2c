import type { ReactElement } from 'react';
import type { JoinList, JoinProblemCode } from '../../../joins/index.ts';
import type { Problem } from '../../../quantity/problem.ts';
import { useWords } from '../../state/page-context.ts';

/** Beyond this many they are counted: a list that is wrong throughout is told by its first rows. */
const mostTold = 40;

const ofKind: ReadonlySet<string> = new Set<JoinProblemCode>(['JOIN_ROW_KIND', 'JOIN_ROW_NO_KIND']);

/** Row by row what could not be read, before anything goes into the book. */
export const ListReport = ({ list }: { readonly list: JoinList }): ReactElement => {
  const { say, problem } = useWords();
  const { taken, problems, empty } = list;
  const refused = new Set(problems.map(({ parts }) => parts?.row)).size;
  const known = taken.filter((one) => one.known).length;
  const told = ({ parts, ...rest }: Problem): string => {
    const column = parts?.column;
    const asked = rest.allowed;
    return problem({
      ...rest,
      // what a row may be is said in the words that a list is read in
      ...(ofKind.has(rest.code) && Array.isArray(asked)
        ? { allowed: asked.map((kind) => say(`joins.name.${kind}`)) }
        : {}),
      parts: { ...parts, ...(column === undefined ? {} : { column: say(`joining.column.${column}`) }) },
    });
  };
  return (
    <div className="list-report" data-taken={taken.length} data-refused={refused}>
      <p role="status">
        {say('joining.list.read', { n: taken.length, of: taken.length + refused, known })}{' '}
        {empty > 0 && say('joining.list.empty', { n: empty })}
      </p>
      {problems.length > 0 && (
        <>
          <h4>{say('joining.list.unread', { n: refused })}</h4>
          <ul>
            {problems.slice(0, mostTold).map((one) => (
              <li className="problem" key={`${one.code} ${one.path}`}>
                {told(one)}
              </li>
            ))}
          </ul>
          {problems.length > mostTold && (
            <p className="small quiet">{say('joining.more', { n: problems.length - mostTold })}</p>
          )}
        </>
      )}
    </div>
  );
};
