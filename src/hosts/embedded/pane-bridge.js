// The pane runs in a frame of the page; what Excel would give it, the page gives it.
for (const name of ["Office", "Excel", "CustomFunctions"]) window[name] = window.parent[name];
