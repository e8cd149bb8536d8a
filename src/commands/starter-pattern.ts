/** A pattern's name -> the text of a starter pattern that checks clean, each line explained. */

export function starterPattern(title: string): string {
  return `# A starter pattern. Change it line by line, and check it after each change:
#   npm run -s rowfold -- check patterns/NAME
# Lines that begin with # are notes to yourself; nobody else sees them.

title: ${JSON.stringify(title)}
about: A plain square to try things on.
terms: US            # the terms the instructions below are written in: US or UK
skill: easy          # basic, easy, intermediate or complex (Craft Yarn Council levels)

# Count your swatch after washing it: finished sizes and yarn are worked out from these.
gauge: {stitches: 16, rows: 18, over: 10 cm, of: single crochet, after: blocking}
hook: 5 mm
yarn:
  A: {colour: oat, hex: "#c9b48a", weight: 4, fibre: wool, ball: {length: 200 m, mass: 100 g}}
notions: [tapestry needle]

# Where sizes differ a number is written 16 (24, 32), in the order of the sizes.
sizes:
  - {name: small}
  - {name: medium}
  - {name: large}

parts:
  - name: Square
    # Each row on a line of its own, as you would print it. A count in brackets at the end is checked.
    work: |
      Foundation: With A, ch 17 (25, 33).
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (16 (24, 32) sts)
      Rows 2-18 (27, 36): Ch 1, sc in each st across, turn. (16 (24, 32) sts)
      Fasten off.

finishing: [Weave in ends., Block to size.]
licence: All rights reserved.
`;
}
