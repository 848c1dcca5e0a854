/** A run that ends with one sentence: status 2 when the arguments are wrong, 1 when the file cannot be judged or written. */
export class Refusal extends Error {
  readonly status: 1 | 2;

  constructor(status: 1 | 2, message: string) {
    super(message);
    this.status = status;
  }
}
