import { describe, expect, test } from 'vitest';
import { inTerms } from '../../src/stitches/in-terms.ts';

describe('a sentence of the designer put into the other terms', () => {
  test('has each stitch exchanged once: sc becomes dc and is not then taken for a US dc', () => {
    expect(inTerms('3 dc in next sp, sk 1 st, sc2tog, sl st in next tr.', 'US', 'UK')).toBe(
      '3 tr in next sp, miss 1 st, dc2tog, ss in next dtr.',
    );
  });

  test('also in names of special stitches, in full words and in the plural', () => {
    expect(inTerms('beg 3-dc cl', 'US', 'UK')).toBe('beg 3-tr cl');
    expect(inTerms('Double crochets are worked in the center; yarn over twice.', 'US', 'UK')).toBe(
      'Treble crochets are worked in the centre; yarn round hook twice.',
    );
    expect(inTerms('Half trebles stand beside trebles', 'UK', 'US')).toBe(
      'Half double crochets stand beside double crochets',
    );
  });

  test('leaves other words alone, and everything where the terms are the same', () => {
    expect(inTerms('Scarves and trellis, pattern stretched', 'US', 'UK')).toBe(
      'Scarves and trellis, pattern stretched',
    );
    expect(inTerms('3 dc, sk 1', 'US', 'US')).toBe('3 dc, sk 1');
  });

  test('post stitches keep to their own height, however the other terms write them', () => {
    expect(inTerms('FPdc around next dc, FPtr, BPsc', 'US', 'UK')).toBe('RtrF around next tr, RdtrF, RdcB');
    expect(inTerms('FPtr round next tr, RtrF, raised front treble', 'UK', 'US')).toBe(
      'FPdc round next dc, FPdc, FPdc',
    );
  });

  test('a popcorn, a puff and a foundation row are of the same stitches', () => {
    expect(inTerms('5-dc popcorn, 3-hdc puff, 12 fdc, linked dc', 'US', 'UK')).toBe(
      '5-tr popcorn, 3-htr puff, 12 ftr, linked tr',
    );
    expect(inTerms('12 fdc, 3-tr cl', 'UK', 'US')).toBe('12 fsc, 3-dc cl');
  });

  test('there and back again it is the same', () => {
    const said = 'Sc in next st, hdc, 2 tr, skip next 2 sts, esc, dc2tog';
    expect(inTerms(inTerms(said, 'US', 'UK'), 'UK', 'US')).toBe(said);
  });
});
