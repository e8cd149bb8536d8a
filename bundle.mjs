/** A file of TypeScript and where to put it -> JavaScript that starts without waiting for what it may not need. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const HERE = path.dirname(fileURLToPath(import.meta.url));

/** A file that asks where it stands is told where it stood before it was made part of another. */
const inItsPlace = {
  name: 'in its place',
  setup: ({ onLoad }) => {
    onLoad({ filter: /[/\\](?:src[/\\].*|tests[/\\]bench[/\\].*|eleventy\.config)\.ts$/ }, ({ path: file }) => ({
      contents: readFileSync(file, 'utf8')
        .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(file).href))
        .replaceAll('import.meta.dirname', JSON.stringify(path.dirname(file))),
      loader: 'ts',
    }));
  },
};

/** Libraries of which a booklet needs a part: they are taken in. All others stay where they are. */
const TAKEN_IN = new Set(['pdfkit', 'fontkit']);

/**
 * Parts of those that we never come to, and that are larger than all the rest together: fonts packed for the web, ciphers,
 * lines broken by the library, pictures in PNG. Ours are not packed, not ciphered, broken by ourselves, and JPEG.
 */
const LEFT_OUT = new Set(['brotli/decompress.js', '@noble/ciphers/aes', 'linebreak', 'png-js']);

const libraries = {
  name: 'libraries',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^[^./]/ }, ({ path: name, importer, kind }) => {
      if (kind === 'entry-point') return undefined;
      if (LEFT_OUT.has(name)) return { path: name, namespace: 'left out' };
      const ofLibrary = /[/\\]node_modules[/\\]/.test(importer);
      return ofLibrary || TAKEN_IN.has(name) ? undefined : { path: name, external: true };
    });
    onLoad({ filter: /./, namespace: 'left out' }, ({ path: name }) => ({
      contents: `
        const leftOut = () => { throw new Error(${JSON.stringify(`${name} was left out of this program.`)}); };
        export { leftOut as default, leftOut as cbc, leftOut as ecb };`,
    }));
  },
};

export async function bundle(entry, folder) {
  await build({
    absWorkingDir: HERE,
    entryPoints: [entry],
    outdir: folder,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    charset: 'utf8',
    minifySyntax: true,
    minifyWhitespace: true,
    sourcemap: 'linked',
    logLevel: 'silent',
    plugins: [inItsPlace, libraries],
    // What a library of the older kind asks for by itself.
    banner: {
      js: "import { createRequire as ownRequire } from 'node:module'; const require = ownRequire(import.meta.url);",
    },
  });
}
