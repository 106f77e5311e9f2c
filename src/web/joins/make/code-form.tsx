import { type ReactElement, useContext, useEffect, useId, useRef, useState } from 'react';
import { findCode } from '../../../joins/index.ts';
import { GoContext, GoLink } from '../../shell/go-link.tsx';
import { joinsAddress } from '../../shell/route.ts';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { ScanDoor } from './scan-door.tsx';

/** Characters from which on a code is whole, so that a wrong one can be told while it is being typed. */
const wholeCode = 6;

const plainLength = (typed: string): number => typed.replace(/[\s._–-]/gu, '').length;

/** A code off a label, typed or scanned; one that is wrong is told at once, with what it may have been. */
export const CodeForm = ({ opened }: { readonly opened: string | undefined }): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const go = useContext(GoContext);
  const book = usePagePart((state) => state.id);
  const { joins, asked } = useJoins();
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const note = `join-code/${book}`;
  const [typed, setTyped] = useState(() => {
    const kept = page.notes.read(note);
    // a code in the address that no join has stands there to be mended
    return opened === undefined ? (asked ?? (typeof kept === 'string' ? kept : '')) : '';
  });
  const [pressed, setPressed] = useState(typed !== '');
  const before = useRef(opened);
  useEffect(() => {
    // the next label: its code is typed at once
    if (opened === undefined && before.current !== undefined) field.current?.focus();
    before.current = opened;
    // the address was changed by a link
    if (opened === undefined) return;
    setTyped('');
    setPressed(false);
  }, [opened]);
  const found = typed.trim() === '' ? undefined : findCode(typed, joins);
  const take = (text: string, whole: boolean): void => {
    const next = findCode(text, joins);
    const named = joins.find(({ tag }) => tag.toUpperCase() === text.trim().toUpperCase());
    const join = next.is === 'found' || next.is === 'shared' ? next.code : whole ? named?.tag : undefined;
    setPressed(whole);
    setTyped(join === undefined ? text : '');
    page.notes.write(note, join === undefined ? text : undefined);
    if (join !== undefined) go(joinsAddress(book, 'make', join));
  };
  const wrong =
    found !== undefined &&
    found.is !== 'found' &&
    found.is !== 'shared' &&
    (pressed || plainLength(typed) >= wholeCode)
      ? found
      : undefined;
  return (
    <form
      className="code-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        take(typed, true);
        field.current?.focus();
      }}
    >
      <label htmlFor={id}>{say('joining.code')}</label>
      <div className="code-line">
        <input
          id={id}
          ref={field}
          data-field="code"
          value={typed}
          autoComplete="off"
          autoCapitalize="characters"
          autoCorrect="off"
          spellCheck={false}
          enterKeyHint="go"
          aria-invalid={wrong !== undefined}
          aria-describedby={`${id}w`}
          onChange={({ target }) => take(target.value, false)}
        />
        <button type="submit" data-act="find">
          {say('joining.code.find')}
        </button>
        <ScanDoor came={(text) => take(text, true)} />
      </div>
      <div id={`${id}w`} role="status" className="code-told">
        {wrong !== undefined && (
          <>
            <p className="problem" data-code={wrong.is}>
              {say(`joining.code.${wrong.is}`, { code: typed.trim() })}
            </p>
            {wrong.nearest.length > 0 && (
              <>
                <p>{say('joining.code.nearest')}</p>
                <ul className="join-names">
                  {wrong.nearest.map(({ join, code }) => (
                    <li key={join}>
                      <GoLink to={joinsAddress(book, 'make', join)}>
                        <span className="join-code">{code}</span> {join}
                      </GoLink>
                    </li>
                  ))}
                </ul>
              </>
            )}
          </>
        )}
      </div>
    </form>
  );
};
