# Local volume tables fitted by R's own lm, for the 31 felled black cherry trees (R's data set trees) and for invented
# trees made at random. Run once in an empty folder: Rscript localTable.R. The tests read its files and need no R.
options(digits = 15)
set.seed(20261125)

head_of <- function(file, step, what) {
  writeLines(c(
    paste0("# source: ", R.version.string, ", lm, script localTable.R beside this file"),
    "# url: https://cran.r-project.org",
    "# standing: computed",
    paste0("# printed to: ", step),
    paste0("# note: ", what)
  ), file)
}
append_to <- function(file, rows) {
  suppressWarnings(write.table(rows, file, append = TRUE, sep = ",", row.names = FALSE, quote = FALSE, na = ""))
}

invented <- do.call(rbind, lapply(1:12, function(set) {
  n <- c(4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 60)[set]
  dbh <- round(runif(n, 5, 28), 1)
  height <- round(30 + 2.2 * dbh + rnorm(n, 0, 6), 0)
  volume <- round(0.0021 * dbh^2 * height * exp(rnorm(n, 0, 0.09)), 2)
  data.frame(set = set, dbh = dbh, height = height, volume = volume)
}))
cherry <- data.frame(set = 0, dbh = trees$Girth, height = trees$Height, volume = trees$Volume)
all <- rbind(cherry, invented)

fits <- do.call(rbind, lapply(unique(all$set), function(set) {
  d <- all[all$set == set, ]
  n <- nrow(d)
  total <- sum((d$volume - mean(d$volume))^2)
  plain <- lm(volume ~ I(dbh^2 * height), d)
  logs <- lm(log(volume) ~ log(dbh) + log(height), d)
  s <- summary(logs)$sigma
  correction <- exp(s^2 / 2)
  misses <- d$volume - correction * exp(fitted(logs))
  rbind(
    data.frame(set = set, form = "Combined variable", a = coef(plain)[[1]], b = coef(plain)[[2]], c = NA, trees = n,
      mean = mean(d$volume), error = summary(plain)$sigma, r2 = summary(plain)$r.squared,
      furnival = summary(plain)$sigma, correction = 1),
    data.frame(set = set, form = "Powers of D and H", a = exp(coef(logs)[[1]]) * correction, b = coef(logs)[[2]],
      c = coef(logs)[[3]], trees = n, mean = mean(d$volume), error = sqrt(sum(misses^2) / (n - 3)),
      r2 = 1 - sum(misses^2) / total, furnival = s * exp(mean(log(d$volume))), correction = correction)
  )
}))

head_of("localTableTrees.csv", "0.01", "invented felled trees")
append_to("localTableTrees.csv", invented)
head_of("localTableFits.csv", "0.000000001", "set 0 is the data set trees, the others are those of localTableTrees.csv")
append_to("localTableFits.csv", fits)
