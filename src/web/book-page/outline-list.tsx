import type { ReactElement } from 'react';
import { GoLink } from '../shell/go-link.tsx';
import { useWords } from '../state/page-context.ts';
import type { OutlineNode } from './outline.ts';
import { useWriting } from './write-context.ts';

/** The name of a line of the outline. */
export const NodeName = ({ node }: { readonly node: OutlineNode }): ReactElement => {
  const { say } = useWords();
  const name = node.name ?? (node.word === undefined ? node.tag : say(node.word));
  return (
    <>
      {node.number !== undefined && <span className="n">{node.number}</span>}
      <span className="what">{name}</span>
      {node.tag !== undefined && node.tag !== name && <span className="tag">{node.tag}</span>}
      {node.count !== undefined && node.count > 0 && <span className="tag">{node.count}</span>}
    </>
  );
};

interface OutlineListProps {
  readonly nodes: readonly OutlineNode[];
  readonly trail: readonly OutlineNode[];
  readonly depth?: number;
}

/** The outline, opened along the way to what is shown. */
export const OutlineList = ({ nodes, trail, depth = 0 }: OutlineListProps): ReactElement => {
  const { address } = useWriting();
  return (
    <ul data-depth={depth}>
      {nodes.map((node) => {
        const on = trail.includes(node);
        const nothing = node.empty === true || node.count === 0;
        return (
          <li key={node.path}>
            <GoLink
              to={address(node.path)}
              current={trail.at(-1) === node}
              {...(nothing ? { className: 'nothing' } : {})}
            >
              <NodeName node={node} />
            </GoLink>
            {on && node.inside.length > 0 && (
              <OutlineList nodes={node.inside} trail={trail} depth={depth + 1} />
            )}
          </li>
        );
      })}
    </ul>
  );
};
