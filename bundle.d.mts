/** Into `folder`, as JavaScript; `entry` from the project's folder. */
export function bundle(entry: string, folder: string): Promise<void>;
