/** What pages, workers and Node have alike besides the language: all that the arithmetic may use of a platform. */
interface MessagePort {
  onmessage: (() => void) | null;
  postMessage(message: unknown): void;
  close(): void;
}
declare class MessageChannel {
  readonly port1: MessagePort;
  readonly port2: MessagePort;
}
interface AbortSignal {
  readonly aborted: boolean;
  throwIfAborted(): void;
}
