import type { ReactElement } from 'react';
import { useMediaAddress } from '../../state/kept-media.ts';
import { usePage } from '../../state/page-context.ts';

/** One picture, film or sound; anything else is a link to it. */
export const MediaPiece = ({
  sha256,
  mediaType,
  name,
}: {
  readonly sha256: string;
  readonly mediaType: string;
  readonly name: string;
}): ReactElement | null => {
  const address = useMediaAddress(usePage(), sha256);
  if (address === undefined) return null;
  if (mediaType.startsWith('video/')) {
    // biome-ignore lint/a11y/useMediaCaption: taken at the machine by hand, nobody has written captions for it
    return <video className="media-piece" controls preload="none" src={address} aria-label={name} />;
  }
  if (mediaType.startsWith('audio/')) {
    // biome-ignore lint/a11y/useMediaCaption: taken at the machine by hand, nobody has written captions for it
    return <audio controls preload="none" src={address} aria-label={name} />;
  }
  return (
    <a className="media-piece" href={address} target="_blank" rel="noreferrer">
      {mediaType.startsWith('image/') ? <img src={address} alt={name} loading="lazy" /> : name}
    </a>
  );
};
