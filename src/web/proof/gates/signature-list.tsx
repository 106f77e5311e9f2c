import type { ReactElement } from 'react';
import type { Gate } from '../../../proof/index.ts';
import { keyFingerprint } from '../../../record/fingerprint.ts';
import { useWords } from '../../state/page-context.ts';
import { momentText } from '../../utilities/found-text.ts';
import type { Keys } from './use-keys.ts';

/** Whose key it is, as far as this browser knows. */
const useWhose = ({ own, known }: Keys) => {
  const { say } = useWords();
  return (key: string, by: string): { readonly text: string; readonly sure: boolean } => {
    const mine = own.find((one) => one.key === key);
    if (mine !== undefined) {
      return mine.by === by
        ? { text: say('gates.whose.own'), sure: true }
        : { text: say('gates.whose.other', { by: mine.by }), sure: false };
    }
    const told = known.find((one) => one.key === key);
    if (told === undefined) return { text: say('gates.whose.unknown'), sure: false };
    if (told.by !== by) return { text: say('gates.whose.other', { by: told.by }), sure: false };
    return told.compared === true
      ? { text: say('gates.whose.compared'), sure: true }
      : { text: say('gates.whose.told'), sure: false };
  };
};

/** What a signature leaves open: behind the id stand the words; an id alone is itself. */
const nameIn = (named: string): string => {
  const at = named.indexOf(': ');
  return at < 0 ? named : named.slice(at + 2);
};

/** Who signed for a gate, when, with whose key, and what of it they could not know. */
export const SignatureList = ({
  gate,
  keys,
}: {
  readonly gate: Gate;
  readonly keys: Keys;
}): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const whose = useWhose(keys);
  if (gate.signatures.length === 0) return null;
  return (
    <ul className="signature-list">
      {gate.signatures.map((one) => {
        const { text, sure } = whose(one.key, one.by);
        return (
          <li key={one.record} data-signature={one.record} data-right={one.right}>
            <p>
              <b>{say('gates.signature', { by: one.by, role: one.role })}</b>{' '}
              <span className="quiet">{momentText(words, one.at)}</span>
            </p>
            <p>{say('gates.signature.said', { statement: one.statement })}</p>
            {!one.right && <p className="short">{say('gates.signature.wrong')}</p>}
            {one.right && (
              <p className={one.unnamed.length > 0 ? 'short' : undefined}>
                {say('gates.signature.open', { n: one.open.length })}
                {one.unnamed.length > 0 && ` ${say('gates.signature.unnamed', { n: one.unnamed.length })}`}
              </p>
            )}
            {one.open.length > 0 && (
              <details>
                <summary>{say('gates.signature.named', { n: one.open.length })}</summary>
                <ul>
                  {one.open.map((named) => (
                    <li key={named}>{nameIn(named)}</li>
                  ))}
                </ul>
              </details>
            )}
            <p className={sure ? 'small quiet' : 'small short'}>
              {text} <span className="fingerprint">{keyFingerprint(one.key)}</span>
            </p>
          </li>
        );
      })}
    </ul>
  );
};
