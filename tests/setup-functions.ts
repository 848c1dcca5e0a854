/** The one global that worksheet functions have beside the language, as the add-in runtime provides it. */
class CellError extends Error {
  readonly code: string;
  constructor(code: string, message = "") {
    super(message);
    this.code = code;
  }
}

Object.assign(globalThis, {
  CustomFunctions: {
    Error: CellError,
    ErrorCode: {
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      invalidNumber: "#NUM!",
      divisionByZero: "#DIV/0!",
      invalidReference: "#REF!",
      nullReference: "#NULL!",
    },
    associate: (): void => undefined,
  },
});
