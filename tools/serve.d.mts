/** Serves the trial page over https on this machine. `spki` is the hash of the key, for a browser that trusts it alone. */
export function serve(options?: { port?: number }): Promise<{ url: string; port: number; trusted: boolean; spki: string; close(): Promise<void> }>;
