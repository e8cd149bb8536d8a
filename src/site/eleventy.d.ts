/** The part of Eleventy that is used here; the package brings no types. */

declare module '@11ty/eleventy' {
  interface EleventyResult {
    readonly outputPath: string | false;
    readonly content: string;
  }

  export class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        readonly configPath: false;
        readonly quietMode: boolean;
        readonly config: (config: import('./run-eleventy.ts').EleventyConfig) => void;
      },
    );
    toJSON(): Promise<EleventyResult[]>;
  }
}
