import type { ReactElement } from 'react';
import type { Problem } from '../../quantity/problem.ts';
import { useWords } from '../state/page-context.ts';

/** Why something was not done, where it was asked for. */
export const ProblemList = ({ problems }: { readonly problems: readonly Problem[] }): ReactElement | null => {
  const words = useWords();
  if (problems.length === 0) return null;
  return (
    <div className="refused" role="alert">
      <p>{words.say('write.not')}</p>
      <ul>
        {problems.slice(0, 6).map((problem) => (
          <li key={problem.code + problem.path}>{words.problem(problem)}</li>
        ))}
      </ul>
    </div>
  );
};
