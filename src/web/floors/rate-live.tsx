import { type ReactElement, useEffect, useRef, useState } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { usePageState, useWords } from '../state/page-context.ts';

/** Long enough that a reader hears the rate once the typing rests, not at every key. */
const rest = 700;

/** Says the rates aloud when they change. */
export const RateLive = ({ floors }: { readonly floors: readonly FloorAssessment[] }): ReactElement => {
  const words = useWords();
  const { units, shown } = usePageState();
  const text = floors
    .map((floor) => {
      const figure = floor.figures.runningRate;
      const rate =
        figure?.value === undefined
          ? words.say('heads.unknown')
          : words.quantity(figure.value, figure.kind, { units, book: shown, bottles: true }).text;
      return words.say('rate.live', { floor: floor.name, rate });
    })
    .join(' ');
  const first = useRef(text);
  const [said, setSaid] = useState('');
  useEffect(() => {
    if (text === first.current) return undefined;
    const timer = setTimeout(() => {
      first.current = text;
      setSaid(text);
    }, rest);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p className="said" aria-live="polite">
      {said}
    </p>
  );
};
