/** What a file may say of its photographs, and the words that explain it in an editor. */

import { z } from 'zod';
import { text } from './written-measures.ts';

/** A photograph, of a pattern or of an along. */
const photograph = z
  .strictObject({
    file: text().meta({
      description: 'Its name in the folder of the pattern: JPEG, PNG, WebP, AVIF or TIFF.',
      examples: ['on-the-chair.jpg'],
    }),
    shows: text().meta({
      description: 'What the photograph shows, in a sentence: it is read aloud to makers who do not see it.',
      examples: ['The square over the back of a chair, its shells pointing down'],
    }),
    by: text()
      .optional()
      .meta({
        description: 'Who took it, where that is to be said.',
        examples: ['The name of the photographer'],
      }),
    part: text()
      .optional()
      .meta({
        description: 'The part it shows, by name: it then stands with the instructions of that part.',
        examples: ['Border'],
      }),
  })
  .meta({
    description: 'A photograph, and what it shows.',
    examples: [{ file: 'on-the-chair.jpg', shows: 'The square over the back of a chair' }],
  });

/** Of a pattern. */
export const photographs = z
  .array(photograph)
  .min(1)
  .meta({
    description:
      'Photographs in the folder of the pattern, the first for the cover. Places and dates that a camera writes into them are not published.',
    examples: [[{ file: 'on-the-chair.jpg', shows: 'The square over the back of a chair' }]],
  });

/** Of an along, which has no parts. */
export const photographsOfAlong = z
  .array(photograph.omit({ part: true }).meta(photograph.meta() ?? {}))
  .min(1)
  .meta({
    description:
      'Photographs in the folder of this file, the first for the cover. They are public from the first build on: show nothing of weeks to come in them.',
    examples: [[{ file: 'wool.jpg', shows: 'Four skeins in the colours of the marsh' }]],
  });
