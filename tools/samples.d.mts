/** The sample workbooks by file name, as bytes. */
export declare const SAMPLES: Readonly<
  Record<"tidy-register.xlsx" | "messy-log.xlsx" | "other-yard.xlsx" | "shared-round.xlsx", () => Promise<Buffer>>
>;
