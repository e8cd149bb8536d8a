/** The faces of the two families in, the bytes of their font files out, read once. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { FontBytes } from '../paint/text-width.ts';
import type { Face } from '../scene/scene.ts';

const require = createRequire(import.meta.url);

/** Source Sans 3 to read, Literata for titles; both under the SIL Open Font License. */
const FONT_FILES: Readonly<Record<Face, string>> = {
  text: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  'text-bold': '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  'text-italic': '@expo-google-fonts/source-sans-3/400Regular_Italic/SourceSans3_400Regular_Italic.ttf',
  title: '@expo-google-fonts/literata/400Regular/Literata_400Regular.ttf',
  'title-bold': '@expo-google-fonts/literata/600SemiBold/Literata_600SemiBold.ttf',
};

/** Kept once read: opening a font takes longer than setting a booklet, and the painter knows bytes it has opened. */
let opened: FontBytes | null = null;

export function readFontFiles(): FontBytes {
  opened ??= {
    text: readFontFile('text'),
    'text-bold': readFontFile('text-bold'),
    'text-italic': readFontFile('text-italic'),
    title: readFontFile('title'),
    'title-bold': readFontFile('title-bold'),
  };
  return opened;
}

export function readFontFile(face: Face): Uint8Array {
  return readFileSync(require.resolve(FONT_FILES[face]));
}
