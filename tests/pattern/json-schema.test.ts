import { describe, expect, test } from 'vitest';
import { type JsonSchema, patternJsonSchema, schemaAt } from '../../src/pattern/json-schema.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';

/** Every key of the schema with what it says of itself. */
function keysOf(schema: JsonSchema, path: string): { readonly path: string; readonly schema: JsonSchema }[] {
  return (schema.anyOf ?? [schema]).flatMap((choice) => [
    ...Object.entries(choice.properties ?? {}).flatMap(([key, inner]) => [
      { path: `${path}.${key}`, schema: inner },
      ...keysOf(inner, `${path}.${key}`),
    ]),
    ...(choice.items === undefined ? [] : keysOf(choice.items, `${path}.0`)),
    ...(typeof choice.additionalProperties === 'object'
      ? keysOf(choice.additionalProperties, `${path}.A`)
      : []),
  ]);
}

const keys = keysOf(patternJsonSchema, 'pattern');

test('the schema is of draft 7, which editors read, and stands on its own', () => {
  const written = JSON.stringify(patternJsonSchema);
  expect(JSON.parse(written)).toMatchObject({
    $schema: 'http://json-schema.org/draft-07/schema#',
    type: 'object',
    required: ['title', 'terms', 'parts'],
  });
  expect(written).not.toContain('$ref');
});

describe('every key teaches in an editor', () => {
  test('all of them were found', () => expect(keys.length).toBeGreaterThan(35));

  test.each(keys)('$path says what it is for in a sentence', ({ schema }) => {
    expect(schema.description).toMatch(/^[A-Z].*\.$/s);
  });
});

test('the example of every key is taken without a fault where it stands', () => {
  const base: Record<string, unknown> = {
    title: 'A',
    terms: 'US',
    parts: [{ name: 'B', work: 'Rnd 1: 6 dc in magic ring.' }],
  };
  const tried = Object.entries(patternJsonSchema.properties ?? {}).flatMap(([key, schema]) =>
    (schema.examples ?? []).map((example) => {
      const { diagnostics } = readPattern(
        { file: 'example', text: JSON.stringify({ ...base, [key]: example }) },
        'a',
      );
      expect([key, example, diagnostics]).toEqual([key, example, []]);
      return key;
    }),
  );
  expect(tried.length).toBeGreaterThan(15);
});

test('a key is found by its path, through lists, named yarns and choices of kind', () => {
  expect(schemaAt(['yarn', 'A', 'weight'])?.maximum).toBe(7);
  expect(schemaAt(['sizes', 3, 'name'])?.type).toBe('string');
  expect(schemaAt(['special', 'shell', 'work'])?.description).toContain('stitches');
  expect(schemaAt(['sizes', 'constructor'])).toBeNull();
  expect(schemaAt(['toString'])).toBeNull();
});
