import { type ReactElement, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { type Book, pointerOf, stepsOf, valueAt } from '../../book/index.ts';
import { memberName } from '../commands/change-list.ts';
import { GoContext, GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { followedPath } from '../state/followed-path.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { AddMember, focusMember } from './add-member.tsx';
import { ListSection } from './list-section.tsx';
import { AskedRemoval, MemberActions, useListActions } from './member-actions.tsx';
import { outlineOf, trailTo } from './outline.ts';
import { NodeName, OutlineList } from './outline-list.tsx';
import { PartFields } from './part-fields.tsx';
import { placeAt } from './place-at.ts';
import { RateStrip } from './rate-strip.tsx';
import { useWriting, type Writing, WritingContext } from './write-context.ts';

/** The nearest place above that is still in the book, or may always be written. */
const standing = (book: unknown, path: string): string => {
  const steps = stepsOf(path);
  for (let depth = steps.length; depth > 0; depth -= 1) {
    const at = pointerOf(steps.slice(0, depth));
    const isMember = /^\d+$/.test(steps[depth - 1] ?? '');
    const form = placeAt(book, at)?.form;
    const isThing = form !== undefined && ['part', 'choice', 'list'].includes(form.is);
    if (isThing && (!isMember || valueAt(book, at) !== undefined)) {
      const missing = steps.slice(0, depth).some((step, i) => {
        const above = pointerOf(steps.slice(0, i + 1));
        return /^\d+$/.test(step) && valueAt(book, above) === undefined;
      });
      if (!missing) return at;
    }
  }
  return '/about';
};

const Member = ({ path }: { readonly path: string }): ReactElement => {
  const page = usePage();
  const { open } = useWriting();
  const list = path.replace(/\/\d+$/, '');
  const book = usePagePart((state) => state.book);
  const members = valueAt(book, list);
  const actions = useListActions(
    (next) => open(next, 'instead'),
    () => open(list, 'instead'),
  );
  const form = placeAt(book, list)?.form;
  return (
    <>
      <div className="write-head">
        <h2>{memberName(page, path)}</h2>
        <MemberActions path={path} count={Array.isArray(members) ? members.length : 0} actions={actions} />
      </div>
      {actions.asked !== undefined && <AskedRemoval asked={actions.asked} settle={actions.settle} />}
      <PartFields path={path} />
      {form?.is === 'list' && (
        <div className="one-more">
          <AddMember
            list={list}
            form={form}
            label={page.words.fieldName(list)}
            behind={Number(path.slice(list.length + 1))}
            added={(next) => {
              open(next);
              focusMember(next);
            }}
          />
        </div>
      )}
    </>
  );
};

const Shown = ({ path }: { readonly path: string }): ReactElement => {
  const { words } = usePage();
  const book = usePagePart((state) => state.book);
  const place = placeAt(book, path);
  if (/\/\d+$/.test(path)) return <Member key={path.replace(/\/\d+$/, '')} path={path} />;
  const name = words.fieldName(path);
  return (
    <>
      <div className="write-head">
        <h2>{name}</h2>
        {place !== undefined && words.has(place.help) && (
          <span className="fhelp">{words.say(place.help)}</span>
        )}
      </div>
      {place?.form.is === 'list' ? (
        <ListSection key={path} path={path} form={place.form} label={name} />
      ) : (
        <PartFields key={path} path={path} />
      )}
    </>
  );
};

/**
 * Keeps the shown thing shown while the book changes round it, by undo or from another tab.
 *
 * Returns  whether it is gone
 */
const useFollowed = (book: Book | undefined, at: string | undefined, open: Writing['open']): boolean => {
  const before = useRef({ book, at });
  const [gone, setGone] = useState<string>();
  useEffect(() => {
    const { book: old, at: path } = before.current;
    before.current = { book, at };
    if (path === undefined || path !== at || old === undefined || book === undefined || old === book) return;
    const next = followedPath(path, old, book);
    if (next === undefined) {
      // the list in which the lost thing stood
      const above = path.replace(/\/\d+(?:\/[^/\d][^/]*)*$/, '');
      setGone(above);
      open(above, 'instead');
    } else if (next !== path) open(next, 'instead');
  }, [book, at, open]);
  return gone !== undefined && gone === at;
};

/** A whole book, written part by part: its outline at the left, the fields of the chosen part at the right. */
export const BookPage = ({ at }: { readonly at: string | undefined }): ReactElement | null => {
  const go = useContext(GoContext);
  const page = usePage();
  const { say } = page.words;
  const [told, tell] = useState('');
  const book = usePagePart((state) => state.book);
  const id = usePagePart((state) => state.id);
  const writing = useMemo(() => {
    const address = (path: string) => bookPageAddress(id, path);
    return {
      tell,
      address,
      open: (path: string, how?: 'instead') => go(address(path), how),
    };
  }, [go, id]);
  const gone = useFollowed(book, at, writing.open);
  const outline = useRef<HTMLElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another place is another line of the outline
  useEffect(() => {
    outline.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' });
  }, [at, book === undefined]);
  if (book === undefined) return null;
  const wanted = at ?? '/about';
  const path = standing(book, wanted);
  const nodes = outlineOf(book);
  const trail = trailTo(nodes, path);
  const above = trail.filter((node) => node.path !== path);
  return (
    <WritingContext value={writing}>
      <div className="write">
        <nav className="outline" ref={outline} aria-label={say('write.outline')}>
          <OutlineList nodes={nodes} trail={trail} />
        </nav>
        <div className="write-main" id="figures" data-part={path} tabIndex={-1}>
          {(gone || (path !== wanted && valueAt(book, wanted) === undefined)) && (
            <p className="gone" role="status">
              {say('write.gone')}
            </p>
          )}
          <RateStrip />
          {above.length > 0 && (
            <nav aria-label={say('write.trail')}>
              <ol className="trail">
                {above.map((node) => (
                  <li key={node.path}>
                    <GoLink to={writing.address(node.path)}>
                      <NodeName node={{ path: node.path, inside: [], ...nameOnly(node) }} />
                    </GoLink>
                  </li>
                ))}
              </ol>
            </nav>
          )}
          <Shown path={path} />
          <p className="said" role="status">
            {told}
          </p>
        </div>
      </div>
    </WritingContext>
  );
};

const nameOnly = ({ name, tag, word }: { name?: string; tag?: string; word?: string }) => ({
  ...(name === undefined ? {} : { name }),
  ...(tag === undefined || name !== undefined ? {} : { tag }),
  ...(word === undefined ? {} : { word }),
});
