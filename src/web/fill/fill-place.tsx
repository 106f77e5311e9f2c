import { createContext, type ReactElement, type ReactNode, useContext, useMemo, useState } from 'react';
import type { Book, Floor, Format, Lane } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { stationOf } from '../../floor/station-of.ts';
import { usePage, usePagePart } from '../state/page-context.ts';

/** What the page speaks of: the floor on which bottles are filled, the bottle, and the lanes. */
export interface FillPlace {
  readonly book: Book;
  readonly floor: Floor & { readonly tag: string };
  readonly assessed: FloorAssessment | undefined;
  readonly format: Format | undefined;
  /** Lanes in use, in their order. */
  readonly lanes: readonly Lane[];
  readonly choose: (choice: { readonly floor?: string; readonly format?: string }) => void;
}

const PlaceContext = createContext<FillPlace | undefined>(undefined);

export const useFillPlace = (): FillPlace => {
  const place = useContext(PlaceContext);
  if (place === undefined) throw new Error('a part of the page stands outside its FillPlace');
  return place;
};

interface Choice {
  readonly floor?: string | undefined;
  readonly format?: string | undefined;
}

const keptChoice = (kept: unknown): Choice => {
  if (typeof kept !== 'object' || kept === null) return {};
  const { floor, format } = kept as Readonly<Record<string, unknown>>;
  return {
    floor: typeof floor === 'string' ? floor : undefined,
    format: typeof format === 'string' ? format : undefined,
  };
};

/** Floor, format and lanes of the page; the choice stays with this browser. */
export const WithPlace = ({
  absent,
  children,
}: {
  readonly absent: ReactNode;
  readonly children: ReactNode;
}): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const book = usePagePart((state) => state.book);
  const assessment = usePagePart((state) => state.assessment);
  const note = `fill-place/${id}`;
  const [choice, setChoice] = useState(() => keptChoice(page.notes.read(note)));
  const place = useMemo((): FillPlace | undefined => {
    if (book === undefined) return undefined;
    const floors = book.floors ?? [];
    const floor =
      floors.find(({ tag }) => tag === choice.floor) ??
      floors.find(({ role }) => role === 'built on') ??
      floors[0];
    const lanes = (stationOf(book, 'fill')?.station.lanes ?? []).filter(({ out }) => out !== true);
    if (floor === undefined || lanes.length === 0) return undefined;
    const formats = book.line?.formats ?? [];
    const agreed = book.agreement?.rates?.[0]?.format;
    return {
      book,
      floor,
      assessed: assessment?.floors.find((one) => one.floor === floor.tag),
      format:
        formats.find(({ tag }) => tag === choice.format) ??
        formats.find(({ tag }) => tag === agreed) ??
        formats[0],
      lanes,
      choose: (next) => {
        const chosen = { ...choice, ...next };
        page.notes.write(note, chosen);
        setChoice(chosen);
      },
    };
  }, [page, note, book, assessment, choice]);
  if (place === undefined) return <>{absent}</>;
  return <PlaceContext value={place}>{children}</PlaceContext>;
};
