/** A file of the published site, named from the site's top: `eelgrass/small/index.html`. */

export interface SiteFile {
  readonly file: string;
  readonly content: string | Uint8Array;
}
