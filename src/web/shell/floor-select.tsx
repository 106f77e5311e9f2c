import type { ReactElement } from 'react';

export interface FloorSelectProps {
  readonly label: string;
  readonly floors: readonly { readonly tag: string; readonly name?: string | undefined }[];
  readonly value: string;
  readonly choose: (tag: string) => void;
}

/** The floor of which a page speaks. */
export const FloorSelect = ({ label, floors, value, choose }: FloorSelectProps): ReactElement => (
  <label className="proof-floor">
    {label}{' '}
    <select value={value} onChange={({ target }) => choose(target.value)}>
      {floors.map(({ tag, name }) => (
        <option key={tag} value={tag}>
          {name ?? tag}
        </option>
      ))}
    </select>
  </label>
);
