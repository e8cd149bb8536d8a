/** The address of a pattern's page in, the section that gives it out: as a code for a camera, and in letters. */

import { mmFromPt } from '../../units.ts';
import type { MeasureText } from '../break-lines.ts';
import { ACCENT } from '../page-grid.ts';
import { qrCode } from '../qr-code.ts';
import { plain, sideSection } from '../section.ts';
import { baselineMm, mainColumn, type Setting, setText, textShape } from '../set-text.ts';
import { keepTogether, moved, type Strip, withSpaceBefore } from '../strip.ts';
import { figureTag, paragraphTag, tagged } from '../tags.ts';

const HEADING = 'On the web';
const SENTENCE = 'The page of this pattern has its newest version and whatever was changed:';
const CODE_GAP_MM = 3;

export function onTheWeb(address: string | null | undefined, setting: Setting): Strip[] {
  if (!address) return [];
  const code = qrCode(address);
  const main = mainColumn(setting);
  const codeMm = code === null || setting.grid.oneColumn ? 0 : code.sideMm + CODE_GAP_MM;
  const place = { xMm: main.xMm + codeMm, widthMm: main.widthMm - codeMm };
  const words = [
    ...setText(plain(SENTENCE), setting.grid.type.body, place, setting),
    addressStrip(address, place, setting),
  ];
  if (code === null) return sideSection(HEADING, keepTogether(words), setting);
  const drawn: Strip = {
    kind: 'strip',
    heightMm: code.sideMm,
    spaceBeforeMm: 0,
    keepWithNext: false,
    shapes: [moved([tagged([code.shape], figureTag(`QR code of the address ${address}`))], main.xMm, 0)],
  };
  if (setting.grid.oneColumn)
    return sideSection(HEADING, keepTogether([...words, ...withSpaceBefore([drawn], CODE_GAP_MM)]), setting);
  let yMm = CODE_GAP_MM;
  const beside = words.map((strip) => {
    const shape = moved(strip.shapes, 0, yMm);
    yMm += strip.heightMm;
    return shape;
  });
  const both: Strip = {
    ...drawn,
    heightMm: Math.max(code.sideMm, yMm),
    shapes: [...beside, ...drawn.shapes],
  };
  return sideSection(HEADING, [both], setting);
}

/** A link; its lines are cut after a stroke or a stop where one is near, never with a hyphen that is not in it. */
function addressStrip(
  address: string,
  { xMm, widthMm }: { readonly xMm: number; readonly widthMm: number },
  setting: Setting,
): Strip {
  const { body } = setting.grid.type;
  const lineMm = mmFromPt(body.linePt);
  const lines = addressLines(address, mmFromPt(body.fontPt), widthMm, setting.measure);
  return {
    kind: 'strip',
    heightMm: lines.length * lineMm,
    spaceBeforeMm: 0,
    keepWithNext: false,
    shapes: [
      {
        kind: 'link',
        href: address,
        tag: { kind: 'Link', within: paragraphTag(), alternative: `The page of this pattern: ${address}` },
        shapes: lines.map((text, index) =>
          textShape({ text, face: 'text', ink: ACCENT }, body, xMm, index * lineMm + baselineMm(body)),
        ),
      },
    ],
  };
}

export function addressLines(
  address: string,
  sizeMm: number,
  widthMm: number,
  measure: MeasureText,
): string[] {
  const lines: string[] = [];
  let rest = address;
  while (rest !== '') {
    let end = rest.length;
    while (end > 1 && measure(rest.slice(0, end), 'text', sizeMm) > widthMm) end -= 1;
    if (end < rest.length) {
      const stop = Math.max(...['/', '.', '-', '?', '&'].map((sign) => rest.lastIndexOf(sign, end - 1)));
      if (stop >= end / 2) end = stop + 1;
    }
    lines.push(rest.slice(0, end));
    rest = rest.slice(end);
  }
  return lines;
}
