/** What an along's file may hold: the keys, their kinds and bounds, and the words that explain them in an editor. */

import { z } from 'zod';
import { BOUNDS } from '../pattern/bounds.ts';
import { type JsonSchema, jsonSchemaOf } from '../pattern/json-schema.ts';
import { photographsOfAlong } from '../pattern/photograph-schema.ts';
import { gauge, YARN_LETTER, yarn } from '../pattern/schema.ts';
import { hook, length, text, wholeNumber } from '../pattern/written-measures.ts';
import { SECOND_ROWS, SHAPES } from './lies.ts';
import { SEAM_NAMES } from './seams.ts';

/** Wide on purpose: they catch a slipped digit. */
const ALONG_BOUNDS = {
  places: [1, 200],
  edgeStitches: [2, 500],
  toleranceMm: [0, 100],
  make: [1, 500],
  rounds: [1, 40],
  covers: [1, 8],
} as const satisfies Record<string, readonly [number, number]>;

const choice = z
  .strictObject({
    pattern: text().meta({
      description: 'The folder of the pattern, as seen from the folder of this file.',
      examples: ['reed-square'],
    }),
    size: text()
      .optional()
      .meta({
        description: 'Which of its sizes; it may be left out where there is one.',
        examples: ['small'],
      }),
    make: wholeNumber(ALONG_BOUNDS.make)
      .optional()
      .meta({
        description: 'How many of it, where that is another number than the week has.',
        examples: [3],
      }),
    covers: wholeNumber(ALONG_BOUNDS.covers)
      .optional()
      .meta({
        description:
          'How many places of the blanket it covers side by side: 2 for one twice as wide as high.',
        examples: [2],
      }),
  })
  .meta({ description: 'One pattern that may be made this week.', examples: [{ pattern: 'reed-square' }] });

const week = z
  .strictObject({
    title: text().meta({
      description: 'What the week is called once it is out. Before its hour it is shown nowhere.',
      examples: ['Week of the reeds'],
    }),
    teaser: text()
      .optional()
      .meta({
        description: 'What the schedule may say of it before its hour. Left out, it says nothing.',
        examples: ['Something that stands in water.'],
      }),
    note: text()
      .optional()
      .meta({ description: 'What you want to say to the makers that week.', examples: ['Take your time.'] }),
    video: z
      .string()
      .regex(/^https:\/\/[^\s/]+(?:\/[^\s]*)?$/)
      .optional()
      .meta({
        description: 'Address of a film of the stitches.',
        examples: ['https://video.example/reeds'],
      }),
    date: text()
      .optional()
      .meta({
        description: 'Its day, where it is not the one that the rhythm gives; later weeks go on from it.',
        examples: ['2026-11-24'],
      }),
    make: wholeNumber(ALONG_BOUNDS.make).meta({
      description: 'How many are made this week, whichever of the choices they are.',
      examples: [6],
    }),
    choices: z
      .array(choice)
      .min(1)
      .meta({
        description: 'The patterns there are to choose from, the one meant for the undecided first.',
        examples: [[{ pattern: 'reed-square' }]],
      }),
  })
  .meta({ description: 'One week: what comes out, and how many are made of it.' });

const edging = z
  .strictObject({
    multiple: text().meta({
      description: 'Over how many stitches of a side it comes out.',
      examples: ['6 plus 5'],
    }),
    corner: text().meta({
      description: 'What is worked in each corner space.',
      examples: ['5 dc in corner ch-2 sp'],
    }),
    first: text()
      .optional()
      .meta({
        description: 'What comes after the corner, before the repeat.',
        examples: ['sk next 2 sts, sc in next st'],
      }),
    repeat: text().meta({
      description: 'What is repeated along a side.',
      examples: ['sk next 2 sts, 5 dc in next st, sk next 2 sts, sc in next st'],
    }),
    last: text()
      .optional()
      .meta({ description: 'What comes after the repeat, before the corner.', examples: ['sk next 2 sts'] }),
  })
  .meta({ description: 'A last round with a repeat. The round below it is made to fit it.' });

const yarnLetter = () => z.string().regex(YARN_LETTER);

export const alongSchema = z
  .strictObject({
    title: text().meta({ description: 'The name of the along.', examples: ['Reed Bed Blanket'] }),
    about: text()
      .optional()
      .meta({ description: 'A sentence or two on what it is.', examples: ['A blanket in six weeks.'] }),
    organiser: text()
      .optional()
      .meta({ description: 'Who holds it.', examples: ['The name makers know you by'] }),
    terms: z.enum(['US', 'UK']).meta({
      description: 'Whether what is written here is in US or UK terms.',
      examples: ['US'],
    }),
    starts: text().meta({
      description: 'Day of the first release: year, month, day.',
      examples: ['2026-10-31'],
    }),
    rhythm: text().meta({
      description: 'The weekday that releases come on.',
      examples: ['every Saturday', 'every second Friday'],
    }),
    hour: text().meta({
      description: 'Hour of the releases, by the clock of the zone.',
      examples: ['09:00'],
    }),
    zone: text().meta({
      description: 'The time zone of that hour, by its name in the IANA time zone database.',
      examples: ['Europe/Vilnius'],
    }),
    elsewhere: z
      .array(text())
      .optional()
      .meta({
        description: 'Other time zones whose hours the schedule shows as well.',
        examples: [['Europe/London', 'Australia/Sydney']],
      }),
    announced: text()
      .optional()
      .meta({
        description: 'Day the along was made known: the feed and the calendar carry it.',
        examples: ['2026-10-01'],
      }),
    gauge: gauge,
    hook: hook.optional().meta({ description: 'The hook that most makers need.', examples: ['4 mm'] }),
    yarn: z.record(yarnLetter(), yarn).meta({
      description:
        'The colours of the blanket, each under the letter that all its patterns call it by. Balls given here are those you tell makers to buy for all of it, and are checked.',
      examples: [{ A: { colour: 'reed', weight: 4, fibre: 'wool' } }],
    }),
    special: z
      .record(z.string(), text())
      .optional()
      .meta({
        description: 'Stitches of your own that the border uses.',
        examples: [{ shell: '5 dc in same st' }],
      }),
    match: z
      .strictObject({
        stitches: wholeNumber(ALONG_BOUNDS.edgeStitches).meta({
          description: 'Stitches along each edge of a square, those in the corners left out.',
          examples: [30],
        }),
        size: length(BOUNDS.finishedMm).meta({
          description:
            'Finished size of a square, edge to edge; of a hexagon, from one side to the side across from it.',
          examples: ['15 cm'],
        }),
        tolerance: length(ALONG_BOUNDS.toleranceMm).meta({
          description: 'By how much a square or hexagon may be larger or smaller.',
          examples: ['5 mm'],
        }),
      })
      .meta({ description: 'What all squares have to have alike, so that any of them can be joined.' }),
    blanket: z
      .strictObject({
        shape: z
          .enum(SHAPES)
          .optional()
          .meta({
            description:
              'What the pieces are: squares, which is meant where nothing is said, or hexagons, whose rows lie half a hexagon aside of one another.',
            examples: ['hexagons'],
          }),
        across: wholeNumber(ALONG_BOUNDS.places).meta({
          description: 'Squares across, or hexagons of the top row.',
          examples: [6],
        }),
        down: wholeNumber(ALONG_BOUNDS.places).meta({
          description: 'Squares down, or rows of hexagons.',
          examples: [8],
        }),
        'second-rows': z
          .enum(SECOND_ROWS)
          .optional()
          .meta({
            description:
              'Of hexagons: whether rows 2, 4, 6 and so on have as many as the top row, which is meant where nothing is said, or one fewer, so that both sides of the blanket are alike.',
            examples: ['one fewer'],
          }),
      })
      .meta({
        description: 'How the squares lie, or the hexagons.',
        examples: [
          { across: 6, down: 8 },
          { shape: 'hexagons', across: 7, down: 8 },
        ],
      }),
    joining: z
      .strictObject({
        method: z.enum(SEAM_NAMES).meta({
          description: 'How they are joined, in US terms.',
          examples: ['single crochet'],
        }),
        colour: yarnLetter().meta({ description: 'In which yarn.', examples: ['B'] }),
      })
      .meta({ description: 'How the squares are joined.' }),
    border: z
      .strictObject({
        colour: yarnLetter().meta({ description: 'In which yarn.', examples: ['B'] }),
        rounds: wholeNumber(ALONG_BOUNDS.rounds).meta({
          description:
            'Rounds of single crochet (UK double crochet), two more stitches on each side in every round.',
          examples: [3],
        }),
        edging: edging.optional(),
      })
      .meta({ description: 'What is worked round the joined squares.' }),
    photographs: photographsOfAlong.optional(),
    weeks: z.array(week).min(1).meta({ description: 'The weeks in their order.' }),
  })
  .meta({ title: 'Rowfold along', description: 'A crochet-along for Rowfold, one file to an along.' });

/** An along file's values, once they are known to be of the right kinds. */
export type AlongFile = z.infer<typeof alongSchema>;

/** Ready to be written to `along.schema.json`. */
export const alongJsonSchema: JsonSchema = jsonSchemaOf(alongSchema);
