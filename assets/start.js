// Starts the page; when it cannot, says so instead of leaving an empty sheet.
function cannotStart(reason) {
  const message = document.getElementById("cannot-start");
  if (message) message.hidden = false;
  const starting = document.getElementById("starting");
  if (starting) starting.hidden = true;
  if (reason) console.error(reason);
}

if (typeof WebAssembly === "object") {
  import("../tankwright.js")
    .then((page) => page.default())
    .catch(cannotStart);
} else {
  cannotStart();
}
