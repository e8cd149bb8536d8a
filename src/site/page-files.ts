/** The project's layouts and fonts -> the files that every page asks for: style sheet, ornament, icon, fonts. */

import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { FILES_FOLDER } from './addresses.ts';
import { finderSheet } from './finder.ts';
import { readFontFile } from './font-files.ts';
import { FONT_FACES, fontFileName } from './font-names.ts';
import { pageScripts } from './page-scripts.ts';
import { coloured, HOUSE_PALETTE } from './palette.ts';
import { PROJECT_FOLDER } from './project-folder.ts';
import type { SiteFile } from './site-file.ts';
import { PAGE_CHARACTERS, webFont } from './web-font.ts';

const require = createRequire(import.meta.url);

/** The faces that pages are set in, each with the text of its licence. */
const FACES = [
  {
    file: 'title.woff',
    family: 'Rowfold Title',
    face: 'title-bold',
    licence: '@expo-google-fonts/literata/LICENSE_FONT',
  },
  {
    file: 'text.woff',
    family: 'Rowfold Text',
    face: 'text',
    licence: '@expo-google-fonts/source-sans-3/LICENSE_FONT',
  },
  {
    file: 'text-bold.woff',
    family: 'Rowfold Text',
    face: 'text-bold',
    licence: '@expo-google-fonts/source-sans-3/LICENSE_FONT',
  },
] as const;

const LICENCE =
  'SIL Open Font License, Version 1.1. The whole text stands in fonts-licence.txt beside this file.';

export async function pageFiles(palette = HOUSE_PALETTE): Promise<SiteFile[]> {
  const folder = path.join(PROJECT_FOLDER, 'layouts/assets');
  const names = (await readdir(folder)).filter((name) => name !== 'not-found.css').sort();
  const assets = names.map(async (name) => ({
    file: `${FILES_FOLDER}/${name}`,
    content: coloured(await readFile(path.join(folder, name), 'utf8'), palette),
  }));
  const styles = path.join(PROJECT_FOLDER, 'layouts/styles');
  const sheets = (await readdir(styles)).sort().map((name) => readFile(path.join(styles, name), 'utf8'));
  const sheet = {
    file: `${FILES_FOLDER}/site.css`,
    content: coloured((await Promise.all(sheets)).join('\n'), palette),
  };
  const fonts = FACES.map(async ({ file, family, face, licence }) => {
    const copyright = (await licenceText(licence)).split('\n')[0] ?? '';
    const names = { family, copyright, licence: LICENCE };
    return {
      file: `${FILES_FOLDER}/${file}`,
      content: webFont(Buffer.from(readFontFile(face)), PAGE_CHARACTERS, names),
    };
  });
  const licences = await Promise.all([...new Set(FACES.map(({ licence }) => licence))].map(licenceText));
  return [
    ...(await Promise.all([...assets, ...fonts])),
    ...(await pageScripts()),
    ...FONT_FACES.map((face) => ({
      file: `${FILES_FOLDER}/${fontFileName(face)}`,
      content: Buffer.from(readFontFile(face)),
    })),
    sheet,
    finderSheet(),
    { file: `${FILES_FOLDER}/fonts-licence.txt`, content: licences.join('\n\n') },
  ];
}

function licenceText(name: string): Promise<string> {
  return readFile(require.resolve(name), 'utf8');
}
