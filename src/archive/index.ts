export { apartRevisions } from './apart-revisions.ts';
export type { ArchivePlace, TakenRevision } from './archive-place.ts';
export { type ByteSource, sourceOf } from './byte-source.ts';
export { type Joined, joinArchive } from './join-archive.ts';
export type { ArchivedMedia, ArchivedRevision, Manifest } from './manifest.ts';
export { type Archive, openArchive } from './open-archive.ts';
export { ArchiveFailure, type PackedArchive, packArchive } from './pack-archive.ts';
export { archiveProblemText } from './problems.text.ts';
export { type ArchiveProblemCode, archiveProblem, archiveProblems } from './problems.ts';
