/** A failure as the client library reports it: `code` is one of its own error codes. */
export class HostError extends Error {
  readonly code: string;
  readonly location: string;

  constructor(code: string, message: string, location = "") {
    super(message);
    this.name = "HostError";
    this.code = code;
    this.location = location;
  }
}
export function invalidArgument(message = "The argument is invalid or missing or has an incorrect format.", location = ""): HostError {
  return new HostError("InvalidArgument", message, location);
}
export function itemNotFound(location = ""): HostError {
  return new HostError("ItemNotFound", "The requested resource doesn't exist.", location);
}
export function itemAlreadyExists(what: string, location = ""): HostError {
  return new HostError("ItemAlreadyExists", `The resource being created already exists: ${what}.`, location);
}
export function accessDenied(location = ""): HostError {
  return new HostError("AccessDenied", "You can't perform the requested operation: the sheet is protected.", location);
}
/** What this host does not model must be heard of by name. */
export function notModelled(member: string): HostError {
  return new HostError("ApiNotFound", `This stand-in host does not implement ${member}.`, member);
}
