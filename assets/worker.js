// Computes away from the page with the same module. An answer without bytes says that it cannot.
import start, { answer_letter } from "../tankwright.js";

const ready = start();

self.onmessage = async ({ data }) => {
  try {
    await ready;
    self.postMessage(answer_letter(data));
  } catch (reason) {
    console.error(reason);
    self.postMessage(new Uint8Array());
  }
};
