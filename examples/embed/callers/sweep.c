/*
 * Sweeps a joint through load cases: sweep JOINT.json MOST STEPS, with the greatest load across in newtons. Prints how many
 * cases hold, the first that does not, and what governs there. Also: how long a verdict and a case take.
 */
#include "../shankline.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

/* The request {"joint": ...} from a file that holds the joint; null if it cannot be read. */
static char *request_of(const char *path)
{
    static const char before[] = "{\"joint\": ";
    FILE *file = fopen(path, "rb");
    char *request = NULL;
    long length = -1;
    if (file != NULL && fseek(file, 0, SEEK_END) == 0) {
        length = ftell(file);
        rewind(file);
    }
    if (length >= 0) {
        request = (char *)malloc((size_t)length + sizeof before + 1);
    }
    if (request != NULL) {
        size_t begun = sizeof before - 1;
        memcpy(request, before, begun);
        length = (long)fread(request + begun, 1, (size_t)length, file);
        strcpy(request + begun + (size_t)length, "}");
    }
    if (file != NULL) {
        fclose(file);
    }
    return request;
}

static double seconds(void)
{
    return (double)clock() / CLOCKS_PER_SEC;
}

int main(int count, char **arguments)
{
    shankline_answer answer = {NULL, 0};
    long steps = count == 4 ? strtol(arguments[3], NULL, 10) : 0;
    double most = count == 4 ? strtod(arguments[2], NULL) : 0.0;
    size_t cases = (size_t)steps, index, held = 0;
    char *request;
    double *across, *along, *used, from, least = 1e9;
    uint8_t *words, *modes;
    int32_t status;
    int run;

    if (count != 4 || steps < 1 || shankline_interface() != SHANKLINE_INTERFACE) {
        fprintf(stderr, "sweep JOINT.json MOST STEPS\n");
        return 2;
    }
    request = request_of(arguments[1]);
    across = (double *)calloc(cases, sizeof *across);
    along = (double *)calloc(cases, sizeof *along);
    used = (double *)calloc(cases, sizeof *used);
    words = (uint8_t *)calloc(cases, 1);
    modes = (uint8_t *)calloc(cases, 1);
    if (request == NULL || across == NULL || along == NULL || used == NULL || words == NULL || modes == NULL) {
        fprintf(stderr, "%s cannot be read, or memory is short\n", arguments[1]);
        return 2;
    }
    for (index = 0; index < cases; index++) {
        across[index] = most * (double)(index + 1) / (double)cases;
    }

    from = seconds();
    status = shankline_sweep(request, strlen(request), cases, across, along, NULL, NULL, words, modes, used, &answer);
    from = seconds() - from;
    if (status != SHANKLINE_ANSWERED) {
        fprintf(stderr, "%s\n", status == SHANKLINE_REFUSED ? answer.text : "called wrongly");
    } else {
        while (held < cases && words[held] == SHANKLINE_HOLDS) {
            held++;
        }
        printf("%lu of %lu load cases hold\n", (unsigned long)held, (unsigned long)cases);
        if (held < cases) {
            printf("the first that does not: %.1f N across, mode %d at %.4f\n", across[held], modes[held], used[held]);
        }
        printf("%.1f ns a case\n", 1e9 * from / (double)cases);
    }
    shankline_free(&answer);

    /* The least of several runs: others may work on the machine. */
    for (run = 0; status == SHANKLINE_ANSWERED && run < 10; run++) {
        const int calls = 100;
        from = seconds();
        for (index = 0; index < (size_t)calls; index++) {
            status = shankline_ask("verdict", request, strlen(request), &answer);
            shankline_free(&answer);
        }
        from = (seconds() - from) / calls;
        least = from < least ? from : least;
    }
    if (status == SHANKLINE_ANSWERED) {
        printf("%.1f us a verdict\n", 1e6 * least);
    }
    free(request);
    free(across);
    free(along);
    free(used);
    free(words);
    free(modes);
    return status == SHANKLINE_ANSWERED ? 0 : 2;
}
