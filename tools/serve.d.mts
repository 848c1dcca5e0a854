/** A running server of the trial page. `spki` is the hash of its key, for a browser that trusts it alone. */
export interface Server {
  readonly url: string;
  readonly port: number;
  readonly trusted: boolean;
  readonly spki: string;
  close(): Promise<void>;
}

/** Serves the trial page over https on this machine, on the port given or on 3000 or the next free one. */
export function serve(options?: { port?: number }): Promise<Server>;
