import type { Book } from '../../book/index.ts';
import type { SettingMoment } from '../../record/setting-moments.ts';

/** The floor on which a setting is read at a moment, where nobody says another: as left at the site, else where it was built. */
export const floorOfMoment = (book: Book, moment: SettingMoment): string | undefined => {
  const floors = book.floors ?? [];
  const role = moment === 'as left' ? 'bound for' : 'built on';
  const usual = moment === 'as left' ? floors.at(-1) : floors[0];
  return (floors.find((floor) => floor.role === role) ?? usual)?.tag;
};
