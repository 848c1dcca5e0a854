/** The sample workbooks by file name, as bytes. */
export declare const SAMPLES: Readonly<Record<"tidy-register.xlsx" | "messy-log.xlsx" | "shared-round.xlsx", () => Promise<Buffer>>>;
