import { type ReactElement, useId, useState } from 'react';
import { type AttachedMedia, attachMedia } from '../../state/kept-media.ts';
import { usePage } from '../../state/page-context.ts';
import { MediaPiece } from './media-piece.tsx';

/** Where files come from: the camera behind the tablet at once, or whatever the device offers. */
const sources = [
  { name: 'camera', field: 'camera', accept: 'image/*', capture: 'environment' },
  { name: 'attach', field: 'media', accept: 'image/*,video/*,audio/*', multiple: true },
] as const;

/** A picture, film or sound taken at the machine or chosen from its files; it is in this browser at once. */
export const AttachField = ({
  attached,
  change,
}: {
  readonly attached: readonly AttachedMedia[];
  readonly change: (attached: readonly AttachedMedia[]) => void;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = useId();
  const [refused, setRefused] = useState('');
  const take = async (files: readonly File[]): Promise<void> => {
    let all = attached;
    const wrong: string[] = [];
    for (const file of files) {
      const one = await attachMedia(page, file);
      if ('refused' in one) wrong.push(`${file.name}: ${one.refused}`);
      else if (!all.some(({ sha256 }) => sha256 === one.sha256)) all = [...all, one];
    }
    setRefused(wrong.join(' '));
    change(all);
  };
  return (
    <div className="attach-field">
      {sources.map(({ name, field, ...own }) => (
        <span key={name}>
          <label className="link" htmlFor={`${id}${name}`}>
            {say(`proving.media.${name}`)}
          </label>
          <input
            {...own}
            id={`${id}${name}`}
            type="file"
            className="said"
            data-field={field}
            onChange={({ target }) => {
              const files = [...(target.files ?? [])];
              target.value = '';
              void take(files);
            }}
          />
        </span>
      ))}
      {attached.length > 0 && (
        <ul className="media-strip">
          {attached.map(({ sha256, mediaType }, i) => (
            <li key={sha256}>
              <MediaPiece
                sha256={sha256}
                mediaType={mediaType}
                name={say('proving.media.one', { n: i + 1 })}
              />
              <button
                type="button"
                className="link"
                onClick={() => change(attached.filter((one) => one.sha256 !== sha256))}
              >
                {say('proving.media.leave', { n: i + 1 })}
              </button>
            </li>
          ))}
        </ul>
      )}
      {refused !== '' && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </div>
  );
};
