import { Message } from '../../src/measure/message.js';

/** A message, or an issue, which says of which input it is. */
const isSaid = (value: object): value is Pick<Message, 'code' | 'values'> =>
  'code' in value && 'values' in value;

/** Every message in a value, and the messages inside those. A message that a part says itself counts as one. */
export const messagesIn = (value: unknown, found: Message[] = [], seen = new Set<unknown>()): Message[] => {
  if (typeof value !== 'object' || !value || seen.has(value)) return found;
  seen.add(value);
  if (isSaid(value)) found.push(new Message(value.code, value.values));
  if (isSaid(value) && value.code === 'saidBy') return found;
  for (const part of value instanceof Map ? value.values() : Object.values(value))
    messagesIn(part, found, seen);
  return found;
};

/** Every text in a plain value, with the path to it. */
export const textsIn = (value: unknown, path = ''): [path: string, text: string][] => {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value !== 'object' || !value) return [];
  return Object.entries(value).flatMap(([key, part]) => textsIn(part, path ? `${path}.${key}` : key));
};
