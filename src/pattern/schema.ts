/** What a pattern file may hold: the keys, their kinds and bounds, and the words that explain them in an editor. */

import { z } from 'zod';
import { SILENCEABLE } from '../diagnostics/softer-codes.ts';
import { BALLS_WRITTEN } from './balls.ts';
import { BOUNDS } from './bounds.ts';
import { films } from './film-schema.ts';
import { SKILLS, SYMBOL_SETS, USES } from './pattern.ts';
import { photographs } from './photograph-schema.ts';
import { hook, length, mass, over, text, wholeNumber, yarnAmount } from './written-measures.ts';

const gaugeCount = z.number().min(BOUNDS.gaugeCount[0]).max(BOUNDS.gaugeCount[1]);

/** A gauge, of a pattern or of what several patterns are joined to. */
export const gauge = z
  .strictObject({
    stitches: gaugeCount.meta({
      description: 'Stitches counted across the measure under over:, after blocking if the piece is blocked.',
      examples: [16],
    }),
    rows: gaugeCount.optional().meta({
      description:
        'Rows counted up the same measure. Left out, rows are taken to be as high as is usual for their stitches, which differs much from hand to hand.',
      examples: [9],
    }),
    over: over.meta({
      description:
        'The measure stitches and rows are counted over, with its unit; two, across and up, for a swatch that was measured as a whole.',
      examples: ['10 cm', '4 in', '15.2 x 14 cm'],
    }),
    of: text()
      .optional()
      .meta({
        description: 'What the swatch was worked in: a stitch, or the pattern itself.',
        examples: ['shell pattern', 'double crochet'],
      }),
    after: z
      .literal('blocking')
      .optional()
      .meta({
        description: 'Write blocking when the swatch was washed and pinned out before it was measured.',
        examples: ['blocking'],
      }),
    before: z
      .strictObject({
        stitches: gaugeCount.meta({ description: 'Stitches counted before blocking.', examples: [17] }),
        rows: gaugeCount.meta({ description: 'Rows counted before blocking.', examples: [10] }),
      })
      .optional()
      .meta({
        description:
          'What was counted over the same measure before blocking, so that makers can measure as they go.',
        examples: [{ stitches: 17, rows: 10 }],
      }),
    took: yarnAmount.optional().meta({
      description:
        'What a swatch of that measure took, weighed or unravelled and measured. Yarn is then worked out from it; a weight needs the ball of the first yarn.',
      examples: ['9 g', '14 m'],
    }),
  })
  .meta({
    description: 'How many stitches and rows fill a measure. Finished sizes and yarn are worked out from it.',
    examples: [{ stitches: 16, rows: 9, over: '10 cm' }],
  });

/** Over a pattern whose repeat is known, or said, repeats may be counted in the place of stitches. */
const patternGauge = gauge
  .extend({
    // Left out where repeats are counted.
    stitches: gaugeCount.optional().meta(gauge.shape.stitches.meta() ?? {}),
    repeats: gaugeCount.optional().meta({
      description:
        'Pattern repeats counted across the measure, in the place of stitches. How many stitches one is follows from the "multiple of" in the instructions; where there is none, stitches: says how many they all are.',
      examples: [2],
    }),
  })
  .superRefine(({ stitches, repeats }, context) => {
    if (stitches === undefined && repeats === undefined)
      context.addIssue({ code: 'invalid_type', expected: 'number', path: ['stitches'], input: undefined });
  })
  .meta({
    description: 'How many stitches and rows fill a measure. Finished sizes and yarn are worked out from it.',
    examples: [{ stitches: 16, rows: 9, over: '10 cm' }],
  });

const ball = z
  .strictObject({
    length: length(BOUNDS.ballLengthMm)
      .optional()
      .meta({
        description: 'How much yarn is on one ball, from its band. Balls to buy are worked out from it.',
        examples: ['180 m', '200 yd'],
      }),
    mass: mass(BOUNDS.ballMassG)
      .optional()
      .meta({
        description: 'What one ball weighs, from its band.',
        examples: ['100 g', '3.5 oz'],
      }),
  })
  .meta({ description: 'What is on the band of one ball.', examples: [{ length: '180 m', mass: '100 g' }] });

/** What instructions call a yarn: `A`, `MC`, `CC1`. */
export const YARN_LETTER = /^[A-Z][A-Z0-9]{0,2}$/;

/** A yarn, in a pattern's list or in that of what several patterns are joined to. */
export const yarn = z
  .strictObject({
    colour: text().meta({
      description: 'Your name for the colour. Readers may use any other.',
      examples: ['reed'],
    }),
    hex: z
      .string()
      .regex(/^#?(?:[0-9a-f]{3}|[0-9a-f]{6})$/i)
      .optional()
      .meta({
        description: 'The colour for pictures and charts, in quotes because of the #.',
        examples: ['#7a8b4f'],
      }),
    weight: wholeNumber([0, 7]).meta({
      description:
        'Craft Yarn Council weight: 0 lace, 1 super fine, 2 fine, 3 light (DK), 4 medium (worsted, aran), 5 bulky, 6 super bulky, 7 jumbo.',
      examples: [4],
    }),
    fibre: text().meta({
      description: 'What the yarn is spun from: it decides how the work is washed and blocked.',
      examples: ['wool', 'cotton'],
    }),
    ball: ball.optional(),
    balls: z
      .union([
        z.number().min(BOUNDS.balls[0]).max(BOUNDS.balls[1]),
        z.string().regex(BALLS_WRITTEN),
        z.array(z.number().min(BOUNDS.balls[0]).max(BOUNDS.balls[1])),
      ])
      .optional()
      .meta({
        description:
          'Balls to buy, one number or one for each size. Left out, they are worked out from the gauge.',
        examples: ['2 (3, 3)', 2],
      }),
    used: z
      .union([yarnAmount, z.record(z.string(), yarnAmount)])
      .optional()
      .meta({
        description:
          'What you used of it yourself, weighed or measured: by the name of the size, or alone where there is one size. What other sizes take is worked out from it, stitch by stitch; a weight needs the ball.',
        examples: [{ medium: '180 g' }, '320 m'],
      }),
  })
  .meta({
    description: 'One yarn: its colour, weight and fibre, and what is on its ball band.',
    examples: [{ colour: 'reed', weight: 4, fibre: 'wool' }],
  });

const size = z
  .strictObject({
    name: text().meta({ description: 'What readers pick the size by.', examples: ['small'] }),
    width: length(BOUNDS.finishedMm)
      .optional()
      .meta({
        description: 'Finished width. Pattern repeats are found from it and the gauge.',
        examples: ['15 cm', '6 1/2 in'],
      }),
    height: length(BOUNDS.finishedMm)
      .optional()
      .meta({
        description: 'Finished height. Rows are found from it and the gauge.',
        examples: ['15 cm', '6 1/2 in'],
      }),
    repeats: wholeNumber(BOUNDS.repeats)
      .optional()
      .meta({
        description:
          'How often the pattern repeat goes across, where the text says "a multiple of 6 plus 2".',
        examples: [8],
      }),
    rows: wholeNumber(BOUNDS.rows)
      .optional()
      .meta({
        description: 'Rows or rounds in all, where the text says "to height".',
        examples: [27],
      }),
  })
  .meta({
    description: 'One size. Numbers in the text written 35 (44, 53) go with the sizes in this order.',
    examples: [{ name: 'small', width: '15 cm', height: '15 cm' }],
  });

const special = z
  .union([
    text(),
    z.strictObject({
      work: text().meta({
        description: 'What it is in stitches, worked at the place it is used.',
        examples: ['5 dc in same st'],
      }),
      name: text()
        .optional()
        .meta({ description: 'Its name in full words.', examples: ['beginning cluster'] }),
      how: text()
        .optional()
        .meta({
          description: 'How to make it, in your own words, where the stitches do not say it all.',
          examples: ['Keep the last loop of each stitch on the hook.'],
        }),
    }),
  ])
  .meta({ description: 'A special stitch: what it is in stitches.', examples: ['5 dc in same st'] });

const part = z
  .strictObject({
    name: text().meta({
      description: 'What the part is called above its instructions.',
      examples: ['Square', 'Border'],
    }),
    onto: text()
      .optional()
      .meta({
        description: 'The earlier part this one is worked onto, by its name.',
        examples: ['Square'],
      }),
    make: wholeNumber(BOUNDS.make)
      .optional()
      .meta({ description: 'How many of it to make.', examples: [2] }),
    work: text().meta({
      description:
        'The instructions as the trade writes them, below a | and set in, each row or round on a line of its own.',
      examples: ['|\n  Row 1: Sc in 2nd ch from hook and in each ch across, turn.'],
    }),
  })
  .meta({ description: 'One piece of the work and its instructions.' });

/** A text, or a list of them. */
const textOrTexts = () => z.union([text(), z.array(text())]);

export const patternSchema = z
  .strictObject({
    title: text().meta({ description: 'The name of the pattern.', examples: ['Eelgrass Square'] }),
    about: text()
      .optional()
      .meta({
        description: 'A sentence or two for the list of patterns and the cover.',
        examples: ['A square of shells like grass in a slow tide.'],
      }),
    designer: text()
      .optional()
      .meta({ description: 'Who designed it.', examples: ['The name readers know you by'] }),
    terms: z.enum(['US', 'UK']).meta({
      description:
        'Whether the instructions below are written in US or UK terms: dc is a different stitch in each.',
      examples: ['US', 'UK'],
    }),
    skill: z
      .enum(SKILLS)
      .optional()
      .meta({ description: 'Craft Yarn Council project level.', examples: ['easy'] }),
    gauge: patternGauge.optional(),
    hook: hook.optional().meta({
      description: 'Hook size in mm, with its US letter if you like; the page prints both.',
      examples: ['5 mm', '5 mm (H-8)'],
    }),
    yarn: z
      .record(z.string().regex(YARN_LETTER), yarn)
      .optional()
      .meta({
        description: 'Each yarn under the letter the instructions call it by.',
        examples: [{ A: { colour: 'reed', weight: 4, fibre: 'wool' } }],
      }),
    notions: textOrTexts()
      .optional()
      .meta({
        description: 'What else is needed: markers, a needle, buttons.',
        examples: [['stitch marker', 'tapestry needle']],
      }),
    sizes: z
      .array(size)
      .min(1)
      .optional()
      .meta({
        description: 'The sizes, smallest first. Leave it out for a pattern of one fixed size.',
        examples: [[{ name: 'small', width: '15 cm' }]],
      }),
    special: z
      .record(z.string(), special)
      .optional()
      .meta({
        description: 'Stitches of your own, each under the word the instructions use for it.',
        examples: [{ shell: '5 dc in same st' }],
      }),
    notes: textOrTexts()
      .optional()
      .meta({
        description: 'What a maker should know before starting.',
        examples: [['Turning chains count as a stitch.']],
      }),
    parts: z.array(part).min(1).meta({
      description: 'The pieces of the work in the order they are made, each with its instructions.',
    }),
    finishing: textOrTexts()
      .optional()
      .meta({
        description: 'What is done when all parts are worked: blocking, sewing up, ends.',
        examples: [['Weave in ends.', 'Block to size.']],
      }),
    film: films.optional(),
    for: z
      .union([z.enum(USES), z.array(z.enum(USES))])
      .optional()
      .meta({
        description: 'What it is for, where cautions follow from it.',
        examples: [['infant']],
      }),
    symbols: z
      .enum(SYMBOL_SETS)
      .optional()
      .meta({
        description:
          'Whose forms the charts draw where they differ: CYC, the Craft Yarn Council, upright crosses for single crochet; JIS, the Japanese standard, crosses aslant, the stem behind broken where stitches cross, triangles where yarn is joined and cut.',
        examples: ['JIS'],
      }),
    licence: text()
      .optional()
      .meta({
        description: 'What readers may do with the pattern.',
        examples: ['CC BY-SA 4.0'],
      }),
    version: text()
      .optional()
      .meta({ description: 'Which version of the pattern this is.', examples: ['2'] }),
    date: z.iso
      .date()
      .optional()
      .meta({
        description: 'Day of this version: year, month, day.',
        examples: ['2026-11-24'],
      }),
    changes: z
      .array(
        z
          .strictObject({
            date: z.iso
              .date()
              .meta({ description: 'Day of the change: year, month, day.', examples: ['2026-12-05'] }),
            version: text()
              .optional()
              .meta({ description: 'The version it first stands in.', examples: ['1.1'] }),
            what: text().meta({
              description: 'What is other than before, for makers who have an earlier version.',
              examples: ['Row 12 of the large size has 44 sts; it said 42.'],
            }),
          })
          .meta({
            description: 'A correction or change, with its day.',
            examples: [{ date: '2026-12-05', what: 'Row 12 of the large size has 44 sts; it said 42.' }],
          }),
      )
      .optional()
      .meta({
        description:
          'Corrections and changes since the first version, shown with their days on page and booklet.',
        examples: [[{ date: '2026-12-05', what: 'Row 12 of the large size has 44 sts; it said 42.' }]],
      }),
    photographs: photographs.optional(),
    allow: z
      .record(z.string(), z.string())
      .optional()
      .meta({
        description:
          'Warnings and notes of the check that are meant to stand, each by its code, with the reason. An error cannot be silenced.',
        examples: [{ 'yarn/unused': 'B is for the border, published apart.' }],
        // For completion in an editor: the codes there are.
        propertyNames: { enum: SILENCEABLE },
      }),
  })
  .meta({ title: 'Rowfold pattern', description: 'A crochet pattern for Rowfold, one file to a pattern.' });

/** A pattern file's values, once they are known to be of the right kinds. */
export type PatternFile = z.infer<typeof patternSchema>;
