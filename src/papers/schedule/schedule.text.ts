import type { RebuildStage } from '../../joins/schedule/stage.ts';
import { type Bundle, prefixed } from '../../text/index.ts';

/** What to mind at each stage; who may do it is for the local code. */
const cautions: Readonly<Record<RebuildStage, string>> = {
  'set down': 'Lifting and rigging by whoever is licensed for it. Nobody stands under a load.',
  level: 'Jack at the points that the builder names; keep hands from under the feet.',
  align: 'Take transport locks out only where the book says so, and keep them.',
  bonds: 'Bonds come before any other conductor, and each is tested before power is joined.',
  drains: 'Drains are open before any water comes.',
  water: 'Prove that the line is without pressure before a hose is opened or closed.',
  air: 'Vent and lock the air before a tube is pulled or pushed in; cylinders can move.',
  power: 'Isolate, lock and prove dead at both ends. Nothing is energised by this paper.',
  signals: 'Isolate, lock and prove dead: control circuits can come from another supply.',
  guards: 'Guards are on and their switches tried before anything is driven.',
};

/** Words of the connection schedule. */
export const scheduleText: Bundle = {
  en: {
    ...prefixed('schedule.caution.', { en: cautions }).en,
    'schedule.title': 'Connection schedule',
    'schedule.about':
      'What is joined again at {floor}, in the order of the rebuild: stage by stage, from box to box on a short way. Tick what is made and what is tested, and write the reading beside it.',
    'schedule.about.nowhere':
      'What is joined again, in the order of the rebuild: stage by stage, from box to box on a short way. Tick what is made and what is tested, and write the reading beside it.',
    'schedule.foot':
      'Joins as the book has them. Isolate, lock and prove dead; connecting and energising follow the local code and licensed practice.',
    'schedule.none': 'The book has no joins yet.',
    'schedule.order': 'Order',
    'schedule.order.stage': 'stage',
    'schedule.order.what': 'where, and how many',
    'schedule.order.way': 'way',
    'schedule.order.caution': 'mind',
    'schedule.order.stop': '{box} {n}',
    'schedule.order.outside': 'outside of the boxes {n}',
    'schedule.way': 'Way between boxes in all: {distance}, in straight lines.',
    'schedule.way.row':
      'Way between boxes in all: {distance}, in straight lines. Assumed: the sections stand end to end, since the plan places none.',
    'schedule.way.unknown': 'The book does not say where the boxes stand, so the way is by their names.',
    'schedule.before': 'Done before the line leaves, no part of the rebuild',
    'schedule.before.join': 'code',
    'schedule.before.what': 'what',
    'schedule.before.done': 'done',
    'schedule.energising': 'Not to be energised yet',
    'schedule.energising.none':
      'Nothing is recorded of any join: no box is ready for anybody to decide about energising it.',
    'schedule.energising.box': 'box',
    'schedule.energising.lacks': 'what the records lack, bonds first',
    'schedule.energising.lack': '{why} {n} ({joins})',
    'schedule.energising.recorded':
      'everything that is asked for here is recorded; whether it may be energised is for the qualified person on the spot',
    'schedule.box.none': 'outside of the boxes',
    'schedule.stop': '{stage}, in {box}',
    'schedule.stop.outside': '{stage}, outside of the boxes',
    'schedule.stop.lacks': 'By the records {box} still lacks: {lacks}.',
    'schedule.picture': '{box}, photograph {n} of {of}',
    'schedule.picture.alt': 'Photograph of {box} with the codes {codes}',
    'schedule.picture.none': 'No photograph of {box} yet',
    'schedule.picture.gone':
      'A photograph of {box} is not at hand here. SHA-256 {digest}: look for a file of this digest where it was taken, or in the archive of the book.',
    'schedule.picture.unprintable':
      'There is a photograph of {box}, but its file, of the format {form}, can’t be printed. In the archive of the book it lies in the folder media under its SHA-256 {digest}: open it there with a program for photographs, or attach a JPEG of it and print anew.',
    'schedule.picture.conflict': '{codes} placed differently by two: look before you connect.',
    'schedule.col.code': 'code',
    'schedule.col.what': 'what',
    'schedule.col.size': 'size, colour',
    'schedule.col.from': 'from',
    'schedule.col.to': 'to',
    'schedule.col.cable': 'cable, core',
    'schedule.col.asked': 'torque, test',
    'schedule.col.made': 'made',
    'schedule.col.tested': 'tested',
  },
};
