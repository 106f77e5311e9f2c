import type { RunPiece, Source } from '../../book/index.ts';

/** Fields of a source in the order in which one asks for them; a path is relative to the source. */
export const sourceFields = (source: Source): readonly string[] => {
  switch (source.kind) {
    case 'gravity':
      return ['surface', 'outlet', 'area', 'makeUp'];
    case 'main':
      return ['static', 'residual', 'testFlow', 'exponent', 'height'];
    case 'pumped':
      return [
        ...(source.curve ?? []).flatMap((_, i) => [`curve/${i}/flow`, `curve/${i}/head`]),
        'ratedFrequency',
        'curveFrequency',
        'frequency',
        'suctionSurface',
        'height',
        ...(source.tank === undefined ? [] : ['tank/volume', 'tank/area', 'tank/makeUp']),
        ...(source.regulator === undefined ? [] : ['regulator/set']),
        ...(source.vessel === undefined
          ? []
          : ['vessel/volume', 'vessel/precharge', 'vessel/cutIn', 'vessel/cutOut']),
      ];
    case 'reading':
      return (source.readings ?? []).flatMap((_, i) => [
        `readings/${i}/lanesOpen`,
        `readings/${i}/pressure`,
        `readings/${i}/flow`,
      ]);
  }
};

/** Fields of a piece of the run. */
export const pieceFields = (piece: RunPiece): readonly string[] => {
  switch (piece.kind) {
    case 'pipe':
      return [
        'bore',
        'length',
        piece.roughness === undefined ? 'material' : 'roughness',
        // heights win over rises: it is asked for only where somebody gave one
        ...(piece.rise === undefined ? [] : ['rise']),
      ];
    case 'valve':
      return ['kv'];
    case 'constant':
      return ['loss'];
  }
};
