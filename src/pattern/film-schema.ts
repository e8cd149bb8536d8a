/** What a pattern file may say of its film: the keys, their kinds, and the words that explain them in an editor. */

import { z } from 'zod';
import { ADDRESS_WRITTEN, AT_WRITTEN, TIME_WRITTEN } from './film.ts';
import { text } from './written-measures.ts';

const time = () => z.string().trim().regex(TIME_WRITTEN);

const film = z
  .strictObject({
    address: z
      .string()
      .trim()
      .regex(ADDRESS_WRITTEN)
      .meta({
        description: 'Address of the film. It is linked to, never shown on the page itself.',
        examples: ['https://films.example.org/eelgrass-square'],
      }),
    length: time()
      .optional()
      .meta({
        description: 'How long the film is, so that no time can lie beyond its end.',
        examples: ['18:40'],
      }),
    name: text()
      .optional()
      .meta({ description: 'What tells it from your other films of this pattern.', examples: ['Close up'] }),
    size: text()
      .optional()
      .meta({
        description: 'The size you make in it, where rows are numbered otherwise in other sizes.',
        examples: ['small'],
      }),
    hand: z
      .enum(['left', 'right'])
      .optional()
      .meta({ description: 'Whose hands it shows, where you film both ways.', examples: ['left'] }),
    at: z
      .string()
      .trim()
      .regex(AT_WRITTEN)
      .optional()
      .meta({
        description:
          'What is written behind the address so that the film begins at a time, {seconds} standing for the number. Left out, it is #t={seconds}.',
        examples: ['?from={seconds}'],
      }),
    times: z
      .record(
        z.string(),
        z.union([time(), z.record(z.string(), time())]).meta({
          description: 'Minutes and seconds at which the row begins, in quotes; or a part with its rows.',
          examples: ['4:10'],
        }),
      )
      .optional()
      .meta({
        description:
          'When each row begins, by the row as the instructions number it; under the name of the part where there are several.',
        examples: [{ 'Rnd 1': '0:40', 'Rnd 2': '2:15' }],
      }),
    topics: z
      .record(z.string(), time())
      .optional()
      .meta({
        description: 'What else is in the film, each with the time at which it begins.',
        examples: [{ 'Yarn and hook': '0:00' }],
      }),
  })
  .meta({
    description: 'A film of the pattern being made, with the time at which each row begins.',
    examples: [{ address: 'https://films.example.org/eelgrass-square', times: { 'Rnd 1': '0:40' } }],
  });

export const films = z.union([film, z.array(film).min(1)]).meta({
  description:
    'Your film of the pattern, or a list of them. Each row that has a time gets a link on the page; rowfold teach makes chapters of them.',
  examples: [{ address: 'https://films.example.org/eelgrass-square', times: { 'Rnd 1': '0:40' } }],
});
