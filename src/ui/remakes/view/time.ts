const form = /^(?:\d+:)?\d{1,2}:[0-5]\d$/;

/** Whether a text is a time of the recording, such as 12:30 or 1:02:03; empty is allowed, as for a step without one. */
export const isTime = (text: string): boolean => text.trim() === "" || form.test(text.trim());
