// Keyboard: "/" goes to the entry line from anywhere on the page, Escape leaves it.
const line = document.getElementById("line");
document.addEventListener("keydown", (event) => {
  const writing = event.target.closest("input, textarea, select");
  if (event.key === "/" && !writing && !event.ctrlKey && !event.metaKey && !event.altKey) {
    event.preventDefault();
    line.focus();
  } else if (event.key === "Escape" && event.target === line) {
    line.blur();
  }
});

// Lines entered before come back with the arrow keys; they stay in this browser. A line being written is kept below them.
const LINES = "fettle.lines";
const MOST_LINES = 50;
const earlier = () => JSON.parse(localStorage.getItem(LINES) ?? "[]");
let back = 0;
let begun = "";
const put = (text) => {
  line.value = text;
  line.dispatchEvent(new Event("input", { bubbles: true }));
};
line.addEventListener("keydown", (event) => {
  const lines = earlier();
  const step = { ArrowUp: 1, ArrowDown: -1 }[event.key];
  if (!step || back + step < 0 || back + step > lines.length) {
    return;
  }
  event.preventDefault();
  begun = back === 0 ? line.value : begun;
  back += step;
  put(back === 0 ? begun : lines[lines.length - back]);
});
document.getElementById("entry").addEventListener("submit", () => {
  const text = line.value.trim();
  if (text) {
    const lines = earlier().filter((each) => each !== text);
    localStorage.setItem(LINES, JSON.stringify([...lines, text].slice(-MOST_LINES)));
    back = 0;
  }
});

// A tag that was meant instead takes its place in the line.
document.addEventListener("click", (event) => {
  const meant = event.target.closest("[data-line]");
  if (meant) {
    line.focus();
    put(meant.dataset.line);
  }
});

// A link that begins an entry puts its first words in the line.
document.addEventListener("click", (event) => {
  const begin = event.target.closest("[data-begin]");
  if (begin) {
    event.preventDefault();
    line.value = begin.dataset.begin;
    line.focus();
    window.scrollTo({ top: 0 });
  }
});

document.addEventListener("click", (event) => {
  if (event.target.closest("[data-print]")) {
    window.print();
  }
});

// A change that was refused opens the page at its first marked field.
document.querySelector("[aria-invalid=true]")?.focus();

// The message of a change is shown once: loading the page again does not tell it again.
const here = new URL(location.href);
if (here.searchParams.has("done")) {
  here.searchParams.delete("done");
  history.replaceState(null, "", here);
}
