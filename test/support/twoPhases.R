# Random two-phase samples, invented by a seeded generator, and the regression and ratio estimates of double sampling
# worked out a second time. Run in test/published/cruise: Rscript ../../support/twoPhases.R. The tests need no R.
#
# No sum of squares is written out here. Lines and residuals are those of lm. Both terms of the variance are squared
# standard errors of the package survey: the first that of the measured plots as a simple random sample, carried from
# n2 to n1 plots; the second that of the residuals in a simple random sample of n2 out of n1, by its finite correction.
suppressMessages(library(survey))
set.seed(2209)
samples <- answers <- data.frame()
kinds <- list(
  "counts"          = function(n) { x <- 10 * rpois(n, 7); list(x, 120 * x + rnorm(n, 0, 1500)) },
  "many empty"      = function(n) { x <- 10 * rpois(n, 1); list(x, ifelse(x > 0, pmax(0, 150 * x + rnorm(n, 0, 400)), 0)) },
  "no line"         = function(n) { x <- runif(n, 20, 90); list(x, rexp(n, 1 / 5000)) },
  "falling line"    = function(n) { x <- runif(n, 1, 40); list(x, 9000 - 150 * x + rnorm(n, 0, 700)) },
  "tight line"      = function(n) { x <- runif(n, 40, 200); list(x, 80 * x + 500 + rnorm(n, 0, 30)) },
  "long tail"       = function(n) { x <- rexp(n, 1 / 60); list(x, x * rexp(n, 1 / 110)) }
)
sizes <- list(c(12, 3), c(30, 10), c(60, 20), c(200, 25), c(40, 40))
error <- function(values, n1) { # of the mean of a simple random sample, out of n1 plots
  SE(svymean(~values, svydesign(ids = ~1, fpc = ~N, data = data.frame(values, N = n1))))[1]
}
error0 <- function(values) SE(svymean(~values, svydesign(ids = ~1, weights = ~w, data = data.frame(values, w = 1))))[1]
number <- 0
for (kind in names(kinds)) for (size in sizes) {
  number <- number + 1; n1 <- size[1]; n2 <- size[2]
  drawn <- kinds[[kind]](n1)
  one <- data.frame(quick = round(drawn[[1]], 1), full = round(drawn[[2]], 1), measured = seq_len(n1) %in% sample(n1, n2))
  some <- one[one$measured, ]
  if (var(some$quick) == 0 || sum(some$quick) == 0) next
  all <- svymean(~quick, svydesign(ids = ~1, weights = ~w, data = transform(one, w = 1)))[1]
  samples <- rbind(samples, data.frame(sample = number, quick = one$quick, full = ifelse(one$measured, sprintf("%.1f", one$full), "")))
  line <- lm(full ~ quick, some)
  design <- svydesign(ids = ~1, weights = ~w, data = transform(some, w = 1))
  ratio <- svyratio(~full, ~quick, design)
  first <- error0(some$full)^2 * n2 / n1
  spread <- function(residuals) sqrt(first + if (n1 == n2) 0 else error(residuals, n1)^2)
  keep <- function(form, mean, slope, residuals)
    answers <<- rbind(answers, data.frame(sample = number, kind, plots = n1, measured = n2, form,
      mean = sprintf("%.12g", mean), slope = sprintf("%.12g", slope), `standard error` = sprintf("%.12g", spread(residuals)),
      check.names = FALSE))
  keep("Regression", predict(line, data.frame(quick = as.numeric(all))), coef(line)[2], resid(line))
  keep("Ratio", coef(ratio) * all, coef(ratio), some$full - as.numeric(coef(ratio)) * some$quick)
}
store <- function(name, data, step, note) {
  writeLines(c(
    paste0("# source: ", R.version.string, ", lm and package survey ", packageVersion("survey"), ", script test/support/twoPhases.R"),
    "# url: https://cran.r-project.org/package=survey", "# standing: computed",
    paste0("# printed to: ", step), paste0("# note: ", note)), name)
  suppressWarnings(write.table(data, name, append = TRUE, sep = ",", row.names = FALSE, quote = FALSE))
}
store("two-phase-samples.csv", samples, 0.1, "invented: the quick measure of every plot, the full one where it was taken")
store("two-phase-answers.csv", answers, 0.000001, "twelve figures; compared as a share, to one in a million")
