/* Prints the verdict of a joint: verdict REQUEST.json, a file with {"joint": ...}. Exit code 2 for a request that is refused. */
#include "../shankline.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* A whole file; null if it cannot be read. */
static char *whole(const char *path, size_t *length)
{
    FILE *file = fopen(path, "rb");
    char *text = NULL;
    size_t room = 0;
    *length = 0;
    if (file == NULL) {
        return NULL;
    }
    for (;;) {
        if (*length == room) {
            char *wider = (char *)realloc(text, room = 2 * room + 4096);
            if (wider == NULL) {
                break;
            }
            text = wider;
        }
        size_t some = fread(text + *length, 1, room - *length, file);
        if (some == 0) {
            break;
        }
        *length += some;
    }
    fclose(file);
    return text;
}

int main(int count, char **arguments)
{
    shankline_answer answer = {NULL, 0};
    size_t length;
    char *joint, *request;
    int32_t status;

    if (count != 2) {
        fprintf(stderr, "verdict JOINT.json\n");
        return 2;
    }
    if (shankline_interface() != SHANKLINE_INTERFACE) {
        fprintf(stderr, "the library has another interface\n");
        return 2;
    }
    joint = whole(arguments[1], &length);
    if (joint == NULL) {
        fprintf(stderr, "%s cannot be read\n", arguments[1]);
        return 2;
    }
    /* A document may be put into a request as it is. */
    request = (char *)malloc(length + 64);
    if (request == NULL) {
        free(joint);
        return 2;
    }
    strcpy(request, "{\"show\": \"report\", \"format\": \"text\", \"joint\": ");
    size_t before = strlen(request);
    memcpy(request + before, joint, length);
    request[before + length] = '}';

    status = shankline_ask("explain", request, before + length + 1, &answer);
    if (status == SHANKLINE_ANSWERED) {
        puts(answer.text);
    } else if (status == SHANKLINE_REFUSED) {
        fprintf(stderr, "%s\n", answer.text); /* a document with code, text and place */
    }
    shankline_free(&answer);
    free(request);
    free(joint);
    return status == SHANKLINE_ANSWERED ? 0 : 2;
}
