import { lazy, type ReactElement, Suspense } from 'react';
import { GoLink } from '../shell/go-link.tsx';
import { QuestionFrame } from '../shell/question-frame.tsx';
import { bookPageAddress, fillAddress } from '../shell/route.ts';
import { untilFetched } from '../shell/until-fetched.ts';
import { WithRecords } from '../state/kept-records.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { FillChoice } from './fill-choice.tsx';
import { useFillPlace, WithPlace } from './fill-place.tsx';
import { type FillStep, fillSteps, stepNamed } from './fill-steps.ts';
import { WeighView } from './weigh-view.tsx';
import { WithAnswer } from './with-answer.tsx';

// each comes when its question is asked
const TrialsView = lazy(() =>
  untilFetched(() => import('./trials-view.tsx')).then((m) => ({ default: m.TrialsView })),
);
const PresetsView = lazy(() =>
  untilFetched(() => import('./presets-view.tsx')).then((m) => ({ default: m.PresetsView })),
);
const FloorView = lazy(() =>
  untilFetched(() => import('./floor-view.tsx')).then((m) => ({ default: m.FloorView })),
);
const SamplesView = lazy(() =>
  untilFetched(() => import('./samples-view.tsx')).then((m) => ({ default: m.SamplesView })),
);
const LotView = lazy(() =>
  untilFetched(() => import('./lot-view.tsx')).then((m) => ({ default: m.LotView })),
);

const views = {
  samples: SamplesView,
  trials: TrialsView,
  presets: PresetsView,
  floor: FloorView,
  lot: LotView,
};

const View = ({ step }: { readonly step: FillStep }): ReactElement => {
  const { say } = useWords();
  const { floor, format } = useFillPlace();
  // another floor or format has another draft at the scales
  const key = `${floor.tag} ${format?.tag ?? ''}`;
  if (step === 'weigh') return <WeighView key={key} />;
  const Shown = views[step];
  const view = (
    <Suspense fallback={<p className="quiet">{say('answer.working')}</p>}>
      <Shown key={key} />
    </Suspense>
  );
  return step === 'lot' ? view : <WithAnswer>{view}</WithAnswer>;
};

/** From the customer's bottles to the lot: one question a view. */
export const FillPage = ({ step: named }: { readonly step: string | undefined }): ReactElement => {
  const { say } = useWords();
  const id = usePagePart((state) => state.id);
  const step = stepNamed(named);
  return (
    <div className="fill-page" id="figures" tabIndex={-1} data-step={step}>
      <WithPlace
        absent={
          <p className="message">
            {say('setting.noLanes')}{' '}
            <GoLink to={bookPageAddress(id, '/line/stations')}>{say('setting.noLanes.write')}</GoLink>
          </p>
        }
      >
        <WithRecords>
          <QuestionFrame
            steps={fillSteps}
            step={step}
            words="setting"
            addressOf={(one) => fillAddress(id, one)}
            beside={<FillChoice withFloor={step !== 'samples' && step !== 'floor'} />}
          >
            <View step={step} />
          </QuestionFrame>
        </WithRecords>
      </WithPlace>
    </div>
  );
};
