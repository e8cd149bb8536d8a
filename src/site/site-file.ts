/** A file of the published site, named from the site's top: `eelgrass/small/index.html`. */

export interface SiteFile {
  readonly file: string;
  readonly content: string | Uint8Array;
}

/** A file's name, and how it is made when its turn comes: a large collection never stands in memory whole. */
export interface FileToMake {
  readonly file: string;
  readonly content: () => Promise<SiteFile['content']>;
  /** Stands for all that it is made of, where that is known: as long as it is the same, so is the file. */
  readonly madeOf?: string;
}
