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
