/** The arrays as they were grown in, the compact fabric out. */

import type { Builder } from './builder.ts';
import type { Fabric, FabricPart, FabricRow } from './fabric.ts';

export function finishFabric(
  builder: Builder,
  size: string,
  rows: readonly FabricRow[],
  parts: readonly FabricPart[],
): Fabric {
  return {
    size,
    stitches: builder.stitchIds.slice(),
    yarns: builder.yarns.slice(),
    count: builder.kind.length,
    kind: Uint16Array.from(builder.kind),
    countsAs: Int16Array.from(builder.countsAs),
    row: Uint32Array.from(builder.row),
    yarn: Uint8Array.from(builder.yarn),
    where: Uint8Array.from(builder.where),
    loop: Uint8Array.from(builder.loop),
    flags: Uint16Array.from(builder.flags),
    group: Int32Array.from(builder.group),
    intoStart: Uint32Array.from([...builder.intoStart, builder.into.length]),
    into: Uint32Array.from(builder.into),
    groups: builder.groups.map(({ special, first, end }) => ({ special, first, end })),
    spaces: builder.spaces.slice(),
    rows,
    parts,
  };
}
