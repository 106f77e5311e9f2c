import { type ReactElement, useEffect, useRef, useState } from 'react';
import { useWords } from '../../state/page-context.ts';

interface Detector {
  readonly detect: (from: HTMLVideoElement) => Promise<readonly { readonly rawValue: string }[]>;
}

type DetectorMaker = new (options: { readonly formats: readonly string[] }) => Detector;

/** Some browsers read square codes by themselves; in the others the code is typed. */
const makerHere = (): DetectorMaker | undefined =>
  (globalThis as { readonly BarcodeDetector?: DetectorMaker }).BarcodeDetector;

/** Often enough that a code is read as soon as it is seen, seldom enough that the picture runs on. */
const between = 150;

const Finder = ({
  maker,
  came,
  refuse,
}: {
  readonly maker: DetectorMaker;
  readonly came: (text: string) => void;
  readonly refuse: () => void;
}): ReactElement => {
  const { say } = useWords();
  const video = useRef<HTMLVideoElement>(null);
  const told = useRef({ came, refuse });
  told.current = { came, refuse };
  useEffect(() => {
    let over = false;
    let stream: MediaStream | undefined;
    const look = async (): Promise<void> => {
      stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
      const shown = video.current;
      if (over || shown === null) return;
      shown.srcObject = stream;
      await shown.play();
      const detector = new maker({ formats: ['qr_code'] });
      while (!over) {
        const [code] = await detector.detect(shown);
        if (code !== undefined && !over) {
          told.current.came(code.rawValue);
          return;
        }
        await new Promise((resolve) => setTimeout(resolve, between));
      }
    };
    const stop = (): void => {
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
    look()
      .catch(() => {
        if (!over) told.current.refuse();
      })
      .finally(() => {
        if (over) stop();
      });
    return () => {
      over = true;
      stop();
    };
  }, [maker]);
  return (
    <video ref={video} className="scan-picture" muted playsInline aria-label={say('joining.scan.picture')} />
  );
};

/** The camera as a reader of the square code on a label, where the browser can. */
export const ScanDoor = ({ came }: { readonly came: (text: string) => void }): ReactElement | null => {
  const { say } = useWords();
  const [open, setOpen] = useState(false);
  const [refused, setRefused] = useState(false);
  const maker = makerHere();
  // a camera is given to pages alone that came over an encrypted line
  if (maker === undefined || navigator.mediaDevices === undefined) return null;
  return (
    <>
      <button
        type="button"
        data-act="scan"
        aria-pressed={open}
        onClick={() => {
          setRefused(false);
          setOpen(!open);
        }}
      >
        {say(open ? 'joining.scan.stop' : 'joining.scan')}
      </button>
      {refused && (
        <span className="problem" role="alert">
          {say('joining.scan.refused')}
        </span>
      )}
      {open && (
        <Finder
          maker={maker}
          came={(text) => {
            setOpen(false);
            came(text);
          }}
          refuse={() => {
            setOpen(false);
            setRefused(true);
          }}
        />
      )}
    </>
  );
};
