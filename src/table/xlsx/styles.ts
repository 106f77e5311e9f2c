/** Styles of the cells that the tool writes, in the order of `cellXfs` below. */
export const styles = { plain: 0, lead: 1, heading: 2, label: 3, open: 4, openDay: 5 } as const;

const border = (side: string): string => `<${side} style="thin"><color rgb="FF9A9A9A"/></${side}>`;
const edges = ['left', 'right', 'top', 'bottom'].map(border).join('');
const wrapped = '<alignment vertical="top" wrapText="1"/>';

/** 49 is text: what is typed stays as it was typed. 164 is the first number that a workbook may give itself. */
const cell = (numberForm: number, font: number, fill: number, edge: number, locked: boolean): string =>
  `<xf numFmtId="${numberForm}" fontId="${font}" fillId="${fill}" borderId="${edge}" xfId="0" applyNumberFormat="1" ` +
  `applyFont="1" applyFill="1" applyBorder="1" applyAlignment="1" applyProtection="1">${wrapped}` +
  `<protection locked="${locked ? 1 : 0}"/></xf>`;

const solid = (colour: string): string =>
  `<fill><patternFill patternType="solid"><fgColor rgb="${colour}"/><bgColor indexed="64"/></patternFill></fill>`;

/** The first two fills are given by the format and cannot be chosen. */
export const stylesXml =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
  '<numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/></numFmts>' +
  '<fonts count="2"><font><sz val="11"/><name val="Arial"/></font><font><b/><sz val="11"/><name val="Arial"/></font></fonts>' +
  '<fills count="4"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>' +
  `${solid('FFE8E8E8')}${solid('FFFFFDE7')}</fills>` +
  `<borders count="2"><border><left/><right/><top/><bottom/><diagonal/></border><border>${edges}<diagonal/></border></borders>` +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  `<cellXfs count="6">${[
    cell(49, 0, 0, 0, true),
    cell(49, 0, 0, 0, true),
    cell(49, 1, 2, 1, true),
    cell(49, 0, 0, 1, true),
    cell(49, 0, 3, 1, false),
    cell(164, 0, 3, 1, false),
  ].join('')}</cellXfs>` +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>';
