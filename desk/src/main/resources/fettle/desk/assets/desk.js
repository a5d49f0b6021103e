// Keyboard: "/" goes to the entry line from anywhere on the page, Escape leaves it.
document.addEventListener("keydown", (event) => {
  const line = document.getElementById("line");
  const writing = event.target.closest("input, textarea, select");
  if (event.key === "/" && !writing && !event.ctrlKey && !event.metaKey && !event.altKey) {
    event.preventDefault();
    line.focus();
  } else if (event.key === "Escape" && event.target === line) {
    line.blur();
  }
});

// A change that was refused opens the page at its first marked field.
document.querySelector("[aria-invalid=true]")?.focus();
