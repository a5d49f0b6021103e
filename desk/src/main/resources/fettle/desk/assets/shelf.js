// A shelf of checks by keyboard or phone: tag, readings, next. Rows live in the text area; this only helps to write them.
const step = document.getElementById("step");
const tag = document.getElementById("step-tag");
const readings = document.getElementById("step-readings");
const said = document.getElementById("step-pack");
const rows = document.getElementById("sheet-rows");
const every = document.getElementById("every");
const scan = document.getElementById("scan");
const camera = document.getElementById("camera");
const DRAFT = "fettle.shelf";

step.hidden = false;

// What is not saved yet survives a closed page; what is saved does not come back.
const changed = () => rows.dispatchEvent(new Event("input", { bubbles: true }));
if (document.querySelector("[data-saved]")) {
  localStorage.removeItem(DRAFT);
} else if (!rows.value && localStorage.getItem(DRAFT)) {
  const kept = JSON.parse(localStorage.getItem(DRAFT));
  rows.value = kept.rows;
  every.value = kept.every;
  addEventListener("load", changed);
}
document.getElementById("shelf").addEventListener("input", () => {
  localStorage.setItem(DRAFT, JSON.stringify({ rows: rows.value, every: every.value }));
});

// A code holds fettle: and the tag, or the address of the pack's page.
const tagOf = (code) => {
  const found = /^(?:fettle:|https?:\/\/[^/]+\/kit\/packs\/)([A-Za-z][A-Za-z0-9._-]{0,15})$/.exec(code.trim());
  return found ? found[1] : null;
};

const known = (name) =>
  [...document.querySelectorAll("#known-packs option")].find((each) => each.value.toLowerCase() === name.toLowerCase());

const choose = (name) => {
  tag.value = name;
  describe();
  readings.focus();
};

const describe = () => {
  const name = tagOf(tag.value) ?? tag.value.trim();
  const pack = known(name);
  if (pack) {
    tag.value = pack.value;
    const cells = Number(pack.dataset.cells);
    said.textContent = `${pack.value} is ${pack.label}: ${cells} ${cells === 1 ? "reading" : "readings"}.`;
  } else {
    said.textContent = name ? `No pack in use is tagged ${name}.` : "Tag, Enter, readings, Enter: the next pack.";
  }
};
tag.addEventListener("change", describe);

step.addEventListener("submit", (event) => {
  event.preventDefault();
  describe();
  if (!tag.value.trim()) {
    tag.focus();
  } else if (!readings.value.trim()) {
    readings.focus();
  } else {
    const before = rows.value.trimEnd();
    rows.value = (before ? before + "\n" : "") + tag.value.trim() + " " + readings.value.trim() + "\n";
    rows.scrollTop = rows.scrollHeight;
    tag.value = "";
    readings.value = "";
    changed();
    tag.focus();
  }
});

document.addEventListener("click", (event) => {
  const wanted = event.target.closest("[data-tag]");
  if (wanted) {
    choose(wanted.dataset.tag);
  }
});

// The camera, where the browser can read codes; typing is always there.
if ("BarcodeDetector" in window && navigator.mediaDevices?.getUserMedia) {
  scan.hidden = false;
}
let stream = null;
const stop = () => {
  stream?.getTracks().forEach((track) => track.stop());
  stream = null;
  camera.replaceChildren();
  scan.textContent = "Scan";
};
scan.addEventListener("click", async () => {
  if (stream) {
    stop();
    return;
  }
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
  } catch {
    said.textContent = "The camera cannot be used here: type the tag.";
    tag.focus();
    return;
  }
  const view = document.createElement("video");
  view.muted = true;
  view.playsInline = true;
  view.srcObject = stream;
  view.setAttribute("aria-label", "what the camera sees");
  camera.replaceChildren(view);
  view.play().catch(() => {}); // until it plays there is nothing to detect, and nothing is found
  scan.textContent = "Stop";
  said.textContent = "Hold the label's code in the picture.";
  const detector = new BarcodeDetector({ formats: ["qr_code"] });
  const look = async () => {
    if (!stream) {
      return;
    }
    const codes = await detector.detect(view).catch(() => []);
    const name = codes.map((code) => tagOf(code.rawValue)).find(Boolean);
    if (name && stream) {
      stop();
      choose(name);
    } else {
      setTimeout(look, 150);
    }
  };
  look();
});

tag.focus({ preventScroll: true });
