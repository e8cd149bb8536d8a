/** The schema that files are read by in, its JSON Schema (draft-07) out, for completion in editors; the pattern file's first of all. */

import { z } from 'zod';
import { patternSchema } from './schema.ts';

/** The part of JSON Schema that the pattern schema comes to. */
export interface JsonSchema {
  readonly title?: string;
  readonly description?: string;
  readonly examples?: readonly unknown[];
  readonly type?: 'string' | 'number' | 'integer' | 'object' | 'array';
  readonly enum?: readonly string[];
  readonly const?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: JsonSchema | false;
  readonly items?: JsonSchema;
  readonly anyOf?: readonly JsonSchema[];
}

/** Ready to be written to `pattern.schema.json`. */
export const patternJsonSchema: JsonSchema = jsonSchemaOf(patternSchema);

export function jsonSchemaOf(schema: z.ZodType): JsonSchema {
  const made: unknown = z.toJSONSchema(schema, { target: 'draft-7', io: 'input' });
  return made as JsonSchema;
}

/** What the schema says of the value at a path; null where it knows no such key. */
export function schemaAt(
  path: readonly (string | number)[],
  file: JsonSchema = patternJsonSchema,
): JsonSchema | null {
  let found: JsonSchema | null = file;
  for (const step of path) found = found === null ? null : within(found, step);
  return found;
}

/** What the schema says of a key or an item of a value. */
export function within(schema: JsonSchema, step: string | number): JsonSchema | null {
  for (const choice of schema.anyOf ?? [schema]) {
    if (typeof step === 'number') {
      if (choice.items !== undefined) return choice.items;
      continue;
    }
    if (choice.properties !== undefined && Object.hasOwn(choice.properties, step))
      return choice.properties[step] ?? null;
    if (typeof choice.additionalProperties === 'object') return choice.additionalProperties;
  }
  return null;
}

/** The keys a value may have, or none where any will do. */
export function knownKeys(schema: JsonSchema): readonly string[] {
  return (schema.anyOf ?? [schema]).flatMap((choice) => Object.keys(choice.properties ?? {}));
}
