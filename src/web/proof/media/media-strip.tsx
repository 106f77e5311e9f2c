import { type ReactElement, useMemo } from 'react';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { useWords } from '../../state/page-context.ts';
import { MediaPiece } from './media-piece.tsx';

interface MediaBody {
  readonly sha256: string;
  readonly mediaType: string;
  readonly caption?: string;
  readonly name?: string;
}

/** The files that a record names as its evidence. */
export const MediaStrip = ({
  evidence,
  of,
}: {
  readonly evidence: readonly string[];
  /** What they show, for who can't see them. */
  readonly of: string;
}): ReactElement | null => {
  const { records } = useKeptRecords();
  const { say } = useWords();
  const media = useMemo(() => {
    const bodies = records.filter(({ kind }) => kind === 'media').map(({ body }) => body as MediaBody);
    return new Map(bodies.map((body) => [body.sha256, body]));
  }, [records]);
  if (evidence.length === 0) return null;
  return (
    <div className="media-strip">
      {evidence.map((sha256, i) => (
        <MediaPiece
          key={sha256}
          sha256={sha256}
          mediaType={media.get(sha256)?.mediaType ?? ''}
          name={media.get(sha256)?.caption ?? say('proving.media.of', { n: i + 1, of })}
        />
      ))}
    </div>
  );
};
