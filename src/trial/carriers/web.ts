/**
 * The page around the pane stands where Excel on the web stands: it answers the messages that the unmodified office.js
 * posts from the pane's iframe. Nothing is injected into the pane. Both pages come over https from the same host name,
 * else office.js does not trust the page it stands in.
 */
import type { Book } from "../book/book";
import type { Carrier, Host } from "../host/host";
import type { Answer, Entry } from "../host/protocol/wire";

export interface PaneOptions {
  paneUrl: string;
  /** Requirement sets claimed; the host's own when left out. */
  requirements?: Readonly<Record<string, string>>;
  locale?: string;
  /** 1 shared runtime, 2 worksheet functions in the pane's runtime. */
  flags?: number;
  /** What the pane tells about focus and its address. */
  onNotify?: (data: unknown) => void;
}
export interface Pane {
  /** Address of the pane with what office.js reads from it. */
  readonly url: string;
  close(): void;
}
const CONVERSATION = "trial";
const ADD_IN = "gear-verdicts";
/** `_actionType` of a message from the pane. */
const ACT = { invoke: 0, register: 1, unregister: 2 } as const;
/** Calls of `executeMethod` by number. */
const DISPATCH = { refreshSettings: 75, saveSettings: 76, batch: 93, commandCompleted: 94 } as const;
/** Numbers of the failures that office.js turns into the codes of the client library. */
const FAILURE: Readonly<Record<string, number>> = {
  RequestPayloadSizeLimitExceeded: 5103,
  ResponsePayloadSizeLimitExceeded: 5104,
  InvalidOperationInCellEditMode: 5004,
  AccessDenied: 7000,
};
const NOT_SUPPORTED = 5000;
const WORKBOOK_SELECTION = 2;
const EVENT_CATEGORY = 65_536;
interface PaneMessage {
  _messageType: number;
  _actionType: number;
  _actionName: string;
  _correlationId: number;
  _data?: {
    DdaMethod?: { DispatchId: number };
    ArrayData?: unknown[];
    DdaSettingsMethod?: { Properties?: [string, string][] };
  };
}
/** Shows the pane in `iframe` and answers it from `host`. */
export function hostPane(iframe: HTMLIFrameElement, host: Host, options: PaneOptions): Pane {
  const carrier = new WebCarrier(iframe, host, options);
  host.attach(carrier);
  carrier.open();
  return carrier;
}
class WebCarrier implements Carrier, Pane {
  readonly url: string;
  private readonly iframe: HTMLIFrameElement;
  private readonly host: Host;
  private readonly options: PaneOptions;
  private readonly locale: string;
  /** Events that the pane has asked for, by name. */
  private readonly registered = new Map<string, PaneMessage>();
  private readonly commands = new Map<string, () => void>();
  private lastCommand = 0;
  private readonly listener = (event: MessageEvent): void => {
    this.receive(event);
  };

  constructor(iframe: HTMLIFrameElement, host: Host, options: PaneOptions) {
    this.iframe = iframe;
    this.host = host;
    this.options = options;
    this.locale = options.locale ?? "en-US";
    const url = new URL(options.paneUrl, window.location.href);
    url.searchParams.set(
      "_host_Info",
      ["Excel", "Web", "16.01", this.locale, CONVERSATION, "", "disableLogging", String(options.flags ?? 3)].join("$"),
    );
    // _xdm_Info comes last: it is read to the end of the address.
    url.hash = `#&_serializer_version=1&_xdm_Info=${encodeURIComponent([CONVERSATION, ADD_IN, window.location.origin].join("|"))}`;
    this.url = url.href;
  }

  open(): void {
    window.addEventListener("message", this.listener);
    this.iframe.src = this.url;
  }

  close(): void {
    window.removeEventListener("message", this.listener);
    this.iframe.src = "about:blank";
  }

  post(entries: Entry[]): void {
    const selection = this.registered.get("documentSelectionChanged");
    const moved = entries.some((entry) => entry.messageCategory === EVENT_CATEGORY && entry.messageType === WORKBOOK_SELECTION);
    if (selection && moved) this.push(selection, {});
    const messages = this.registered.get("richApiMessage");
    if (messages)
      this.push(messages, {
        ArrayData: entries.map((entry) => [entry.messageCategory, entry.messageType, entry.targetId, entry.message, 0, false]),
      });
  }

  press(name: string): Promise<void> {
    const message = this.registered.get("appCommandInvoked");
    if (!message) return Promise.reject(new Error(`The pane is not ready for the button ${name}.`));
    this.lastCommand += 1;
    const id = `command-${String(this.lastCommand)}`;
    const completed = new Promise<void>((done) => this.commands.set(id, done));
    this.push(message, { 0: id, 1: name, 2: JSON.stringify({ source: { id: name } }) });
    return completed;
  }

  private receive(event: MessageEvent): void {
    if (event.source !== this.iframe.contentWindow || event.origin !== new URL(this.url).origin || typeof event.data !== "string") return;
    const message = readMessage(event.data);
    if (!message) return;
    if (message._actionType === ACT.register) {
      this.registered.set(message._actionName, message);
      this.reply(message, { Error: 0 });
    } else if (message._actionType === ACT.unregister) {
      this.registered.delete(message._actionName);
      this.reply(message, { Error: 0 });
    } else if (message._actionName === "ContextActivationManager_getAppContextAsync") {
      // A pane that starts anew has forgotten what it asked for.
      this.registered.clear();
      this.reply(message, this.appContext());
    } else if (message._actionName === "ContextActivationManager_notifyHost") {
      this.options.onNotify?.(message._data);
    } else if (message._actionName === "executeMethod") {
      void this.execute(message);
    }
  }

  private async execute(message: PaneMessage): Promise<void> {
    const dispatch = message._data?.DdaMethod?.DispatchId;
    const { settings } = this.host.book;
    switch (dispatch) {
      case DISPATCH.batch: {
        const [, , , , text, , flags] = message._data?.ArrayData ?? [];
        this.reply(message, batchReply(await this.host.answer(String(text), Number(flags ?? 0))));
        return;
      }
      case DISPATCH.saveSettings:
        settings.clear();
        for (const [key, text] of message._data?.DdaSettingsMethod?.Properties ?? []) settings.set(key, text);
        this.reply(message, { Version: 1, Error: 0 });
        return;
      case DISPATCH.refreshSettings:
        this.reply(message, { Version: 1, Error: 0, Properties: { Settings: [...settings].map(([Name, Value]) => ({ Name, Value })) } });
        return;
      case DISPATCH.commandCompleted:
        this.completeCommand(message);
        return;
      default:
        console.error(`This stand-in host does not implement call ${String(dispatch)} of the Common API.`);
        this.reply(message, { Version: 1, Error: NOT_SUPPORTED });
    }
  }

  private completeCommand(message: PaneMessage): void {
    // The call names its command; with a single one running there is no doubt anyway.
    const text = JSON.stringify(message._data);
    const id = [...this.commands.keys()].find((known) => text.includes(`"${known}"`)) ?? [...this.commands.keys()][0];
    if (id !== undefined) {
      this.commands.get(id)?.();
      this.commands.delete(id);
    }
    this.reply(message, { Version: 1, Error: 0 });
  }

  private reply(message: PaneMessage, data: unknown): void {
    this.send(message, data, 0);
  }

  /** An event travels as another response to the message that registered for it. */
  private push(message: PaneMessage, data: unknown): void {
    this.send(message, data, 1);
  }

  private send(message: PaneMessage, data: unknown, responseType: 0 | 1): void {
    const text = JSON.stringify({
      _messageType: 1,
      _actionName: message._actionName,
      _conversationId: CONVERSATION,
      _correlationId: message._correlationId,
      _origin: window.location.origin,
      _errorCode: 0,
      _responseType: responseType,
      _data: data,
      _serializerVersion: 1,
    });
    this.iframe.contentWindow?.postMessage(text, new URL(this.url).origin);
  }

  private appContext(): Record<string, unknown> {
    const { book } = this.host;
    return {
      _id: ADD_IN,
      _appInstanceId: "trial",
      _appName: 16,
      _appVersion: "16.01",
      _appUILocale: this.locale,
      _dataLocale: this.locale,
      _docUrl: documentUrl(book),
      _clientMode: 1,
      _settings: [...book.settings],
      _reason: "documentOpened",
      _osfControlType: 1,
      _eToken: "",
      _correlationId: CONVERSATION,
      _requirementMatrix: JSON.stringify(this.options.requirements ?? this.host.requirements),
      _hostFullVersion: "16.0.0.0",
      _appMinorVersion: 1,
      _addinName: ADD_IN,
      _appDomains: [],
      _initialDisplayMode: 2,
      _featureGates: {},
    };
  }
}
function readMessage(text: string): PaneMessage | null {
  let message: PaneMessage;
  try {
    message = JSON.parse(text) as PaneMessage;
  } catch (error) {
    // Other scripts on the page may post what is no JSON; it is not for us.
    if (error instanceof SyntaxError) return null;
    throw error;
  }
  return message._messageType === 0 ? message : null;
}
function batchReply(answer: Answer): Record<string, unknown> {
  if (answer.ok) return { Version: 1, Error: 0, Data: [200, [], answer.text] };
  return { Version: 1, Error: FAILURE[answer.code] ?? NOT_SUPPORTED };
}
function documentUrl(book: Book): string {
  return `${window.location.origin}/${encodeURIComponent(book.fileName)}`;
}
